import { type Reason, requireObject } from '../base/index.js'
import type { Quantity, TemperatureUnit, VolumeUnit } from '../quantity/index.js'
import type { OfferedOil } from '../spec/index.js'
import { type OilCodes, oilReason } from './codes.js'
import { densityAt } from './densityAt.js'
import { requireQuantity } from './requireQuantity.js'

export type VolumeVerdict<U extends VolumeUnit> =
  | {
      readonly verdict: 'volume'
      readonly volume: Quantity<U>
      readonly reasons: readonly Reason<keyof OilCodes>[]
    }
  | { readonly verdict: 'cannot tell'; readonly reasons: readonly Reason<keyof OilCodes>[] }

/**
 * What volume a measured amount of oil takes at another temperature, for comparing hot oil drained with cold oil
 * refilled. It says nothing about oil that stays on walls.
 *
 * V2 = V1·ρ(t1)/ρ(t2), densities by {@link densityAt}.
 *
 * @param oil - `density15` from the data sheet; missing: `cannot tell`
 * @param volume - as measured, 0 or more
 * @param from - temperature at which it was measured, −50 °C to 150 °C
 * @param to - temperature asked for, −50 °C to 150 °C
 * @returns the volume in the unit given, not rounded, or `cannot tell` with the reason
 * @throws TypeError or RangeError when an argument is no quantity or the volume is negative
 *
 * Source: as {@link densityAt}.
 *
 * @example
 * ```ts
 * import { volumeAt } from 'drivetrain-service/v1/oil'
 * // How much is 1 L of hot oil (60 °C) once it is at 20 °C?
 * const oil = { density15: { value: 890, unit: 'kg/m3' } } as const
 * const answer = volumeAt(oil, { value: 1, unit: 'L' }, { value: 60, unit: 'degC' }, { value: 20, unit: 'degC' })
 * answer.verdict === 'volume' && answer.volume.value.toFixed(3) // => '0.971'
 * ```
 */
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
  if (oil.density15 === undefined) {
    return { verdict: 'cannot tell', reasons: [oilReason('oil/density-missing', {})] }
  }
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
