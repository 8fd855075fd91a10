import { convert, measureOf, type Quantity, type VolumeUnit } from '../../quantity/index.js'
import type { SpecValue } from '../../spec/index.js'

/** The least and the most that a stated volume names, in millilitres; a nominal names the same twice. */
export interface StatedVolume {
  readonly least: Quantity<'mL'>
  readonly most: Quantity<'mL'>
}

/** Reads a volume for a comparison; undefined where it is not stated, is no volume, or has no figure. */
export function statedVolume(value: SpecValue | undefined): StatedVolume | undefined {
  if (value === undefined || value.kind === 'not stated' || measureOf(value.unit) !== 'volume')
    return undefined
  const [least, most] =
    value.kind === 'limits' ? [value.min ?? value.max, value.max ?? value.min] : [value.value, value.value]
  if (least === undefined || most === undefined) return undefined
  const inMillilitres = (figure: string): Quantity<'mL'> =>
    convert({ value: Number(figure), unit: value.unit as VolumeUnit }, 'mL')
  return { least: inMillilitres(least), most: inMillilitres(most) }
}
