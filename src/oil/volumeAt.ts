import { type Reason, requireObject } from '../base/index.js'
import { type Quantity, requireQuantity, type TemperatureUnit, type VolumeUnit } from '../quantity/index.js'
import type { OfferedOil } from '../spec/index.js'
import { type OilCodes, oilReason } from './codes.js'
import { densityAt } from './densityAt.js'

export type VolumeVerdict<U extends VolumeUnit> =
  | {
      readonly verdict: 'volume'
      readonly volume: Quantity<U>
      readonly reasons: readonly Reason<keyof OilCodes>[]
    }
  | { readonly verdict: 'cannot tell'; readonly reasons: readonly Reason<keyof OilCodes>[] }

/** V2 = V1·ρ(t1)/ρ(t2), densities by {@link densityAt}: compares hot drained oil with cold refill. Wall films are not included. */
export function volumeAt<U extends VolumeUnit>(
  oil: Pick<OfferedOil, 'density15'>,
  volume: Quantity<U>,
  from: Quantity<TemperatureUnit>,
  to: Quantity<TemperatureUnit>,
): VolumeVerdict<U> {
  requireObject('oil', oil)
  requireQuantity('volume', volume, 'volume')
  if (volume.value < 0) throw new RangeError(`volume.value must be 0 or more, got ${volume.value}`)
  requireQuantity('from', from, 'temperature')
  requireQuantity('to', to, 'temperature')
  if (oil.density15 === undefined)
    return { verdict: 'cannot tell', reasons: [oilReason('oil/density-missing', {})] }
  const before = densityAt(oil.density15, from)
  if (before.verdict === 'cannot tell') return before
  const after = densityAt(oil.density15, to)
  if (after.verdict === 'cannot tell') return after
  return {
    verdict: 'volume',
    volume: { value: (volume.value * before.factor) / after.factor, unit: volume.unit },
    reasons: [...before.reasons, ...after.reasons],
  }
}
