import { type Reason, requireKnownKeys, requireOneOf } from '../base/index.js'
import { convertAmount, type LengthUnit, type Quantity, type VolumeUnit } from '../quantity/index.js'
import { type FillCodes, fillReason } from './codes.js'
import { requireAmount } from './volumeAmount.js'

export interface DrainInput {
  /** Oil in the gearcase above the drain opening. */
  readonly volume: Quantity<VolumeUnit>
  /** Height of the oil's surface above the drain opening. */
  readonly depth: Quantity<LengthUnit>
  readonly opening: { readonly bore: Quantity<LengthUnit>; readonly length: Quantity<LengthUnit> }
  readonly kinematicViscosity: Quantity<'mm2/s'>
  /** `none`: the drain is the gearcase's only opening, so air must enter where the oil runs out. */
  readonly fillOpening: 'out' | 'in' | 'none'
  /** `none`: the gearcase has no breather. */
  readonly breather: 'clear' | 'blocked' | 'not checked' | 'none'
}

export type DrainVerdict =
  | {
      readonly verdict: 'drain time'
      /** No gearcase of this volume and depth drains faster. */
      readonly minimum: Quantity<'s'>
      /** The same for vertical walls. */
      readonly straightWalls: Quantity<'s'>
      readonly reasons: readonly Reason<keyof FillCodes>[]
    }
  | { readonly verdict: 'cannot tell'; readonly reasons: readonly Reason<keyof FillCodes>[] }

const GRAVITY = 9.80665

/**
 * Calculates the minimum time that a gearcase needs to drain, for planning. Draining ends when the oil only drips, which
 * takes many times as long; if the manual gives a waiting time, use that. The answer is a time only if the
 * fill plug is out and the breather is clear (or there is none): otherwise no air can replace the oil.
 *
 * V² / 2 + 32·ν·ℓ·V/d² = g·(z + ℓ); minimum = volume/(area·V at full depth), straight walls: ∫ over the depth.
 *
 * @param input - volume, depth above the opening, bore and length of the hole, viscosity of the oil, all
 *   above 0; state of the fill opening and the breather
 * @returns two times in seconds, not rounded, or `cannot tell` with the reason
 * @throws TypeError or RangeError if a part of the input has the wrong shape or is not above 0
 *
 * Source: energy balance with the developed laminar loss as the smallest possible loss (Hagen–Poiseuille). House rule
 * that it is a minimum.
 *
 * @example
 * ```ts
 * import { drainTime } from 'drivetrain-service/v1/fill'
 * // Can a drain time be given while the fill plug is still in?
 * const answer = drainTime({
 *   volume: { value: 1, unit: 'L' }, depth: { value: 80, unit: 'mm' },
 *   opening: { bore: { value: 16, unit: 'mm' }, length: { value: 12, unit: 'mm' } },
 *   kinematicViscosity: { value: 60, unit: 'mm2/s' }, fillOpening: 'in', breather: 'clear',
 * })
 * answer.verdict // => 'cannot tell'
 * ```
 */
export function drainTime(input: DrainInput): DrainVerdict {
  requireKnownKeys('input', input, [
    'volume',
    'depth',
    'opening',
    'kinematicViscosity',
    'fillOpening',
    'breather',
  ])
  const { volume, depth, opening, kinematicViscosity, fillOpening, breather } = input
  requireKnownKeys('opening', opening, ['bore', 'length'])
  requireAmount('volume', volume, 'volume', { above: 0 })
  requireAmount('depth', depth, 'length', { above: 0 })
  requireAmount('opening.bore', opening.bore, 'length', { above: 0 })
  requireAmount('opening.length', opening.length, 'length', { above: 0 })
  requireAmount('kinematicViscosity', kinematicViscosity, 'kinematicViscosity', { above: 0 })
  const reasons = findAirReasons(fillOpening, breather)
  if (reasons.length > 0) return { verdict: 'cannot tell', reasons }
  const toMetres = (given: Quantity<LengthUnit>) => convertAmount(given, 'm').value
  const bore = toMetres(opening.bore)
  const length = toMetres(opening.length)
  const fullHead = toMetres(depth) + length
  const litres = convertAmount(volume, 'L').value
  const viscousTerm = (32 * kinematicViscosity.value * 1e-6 * length) / bore ** 2
  const calculateSpeed = (head: number) =>
    (2 * GRAVITY * head) / (viscousTerm + Math.sqrt(viscousTerm ** 2 + 2 * GRAVITY * head))
  const firstSpeed = calculateSpeed(fullHead)
  const lastSpeed = calculateSpeed(length)
  const columnLength = litres / 1000 / ((Math.PI / 4) * bore ** 2)
  const minimum = columnLength / firstSpeed
  // with straight walls dt = −(columnLength/depth)·dH/V, and g·dH = (viscousTerm + V)·dV
  const straightTime =
    (columnLength / (fullHead - length) / GRAVITY) *
    (viscousTerm * Math.log(firstSpeed / lastSpeed) + firstSpeed - lastSpeed)
  if (!Number.isFinite(minimum) || !Number.isFinite(straightTime))
    throw new RangeError(
      'input must describe a gearcase; its drain time is too large or too small for a number',
    )
  return {
    verdict: 'drain time',
    minimum: { value: minimum, unit: 's' },
    straightWalls: { value: straightTime, unit: 's' },
    reasons: [fillReason('fill/drain-time-is-a-minimum', {}), fillReason('fill/wait-for-single-drips', {})],
  }
}

function findAirReasons(fillOpening: unknown, breather: unknown): Reason<keyof FillCodes>[] {
  requireOneOf('fillOpening', fillOpening, ['out', 'in', 'none'])
  requireOneOf('breather', breather, ['clear', 'blocked', 'not checked', 'none'])
  return [
    ...(fillOpening === 'in' ? [fillReason('fill/fill-opening-closed', {})] : []),
    ...(fillOpening === 'none' ? [fillReason('fill/drain-is-the-only-opening', {})] : []),
    ...(breather === 'blocked' ? [fillReason('fill/breather-blocked', {})] : []),
    ...(breather === 'not checked' ? [fillReason('fill/breather-not-checked', {})] : []),
  ]
}
