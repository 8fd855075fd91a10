import {
  compareExact,
  type Exact,
  minus,
  type PrintedQuantity,
  plus,
  requireBand,
  type VolumeUnit,
} from '../quantity/index.js'
import type { StatedValue } from '../spec/index.js'
import { exactVolume } from './volumeAmount.js'

/** A stated volume as exact limits in mL, as shown amounts, and with the figure that a deviation is measured from. */
export interface VolumeBand {
  readonly min?: Exact
  readonly max?: Exact
  /** Half of the last printed digit of a bare nominal, as exact mL. */
  readonly rounding?: Exact
  readonly nominal?: Exact
  readonly printed?: PrintedQuantity<VolumeUnit>
  readonly shown: { readonly min?: PrintedQuantity<VolumeUnit>; readonly max?: PrintedQuantity<VolumeUnit> }
}

/** What a sheet's volume allows; a bare nominal allows nothing that it says. Internal. */
export function volumeBand(stated: StatedValue<VolumeUnit>): VolumeBand {
  requireBand('stated', stated)
  const { unit } = stated
  const of = (value: string) => exactVolume({ value, unit })
  if (stated.kind === 'limits') {
    const min = stated.min === undefined ? {} : { min: { value: stated.min, unit } }
    const max = stated.max === undefined ? {} : { max: { value: stated.max, unit } }
    return {
      ...(stated.min === undefined ? {} : { min: of(stated.min) }),
      ...(stated.max === undefined ? {} : { max: of(stated.max) }),
      shown: { ...min, ...max },
    }
  }
  const nominal = of(stated.value)
  const printed = { value: stated.value, unit }
  if (stated.kind === 'nominal') {
    const decimals = (stated.value.split('.')[1] ?? '').length
    const half = decimals === 0 ? '0.5' : `0.${'0'.repeat(decimals)}5`
    return { nominal, printed, rounding: of(half), shown: {} }
  }
  const bounds = { min: minus(nominal, of(stated.minus)), max: plus(nominal, of(stated.plus)) }
  return { ...bounds, nominal, printed, shown: {} }
}

/** Below, inside or above the band; limits belong to it. Internal. */
export function sideOfBand(volume: Exact, { min, max }: Pick<VolumeBand, 'min' | 'max'>): -1 | 0 | 1 {
  if (min !== undefined && compareExact(volume, min) < 0) return -1
  return max !== undefined && compareExact(volume, max) > 0 ? 1 : 0
}
