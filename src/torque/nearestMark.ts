import type { Reason } from '../base/index.js'
import { compareExact, type Exact, exactOf, minus, over, type TorqueUnit, times } from '../quantity/index.js'
import type { TorqueWrench, WrenchScale } from '../spec/index.js'
import { torqueReason } from './codes.js'
import { nearestTorque, torqueRatio } from './exactTorque.js'
import { type Deviation, deviationPart, scaleMark } from './scaleMark.js'

/** The target band at the fastener, exactly, in the sheet's own unit. */
export interface TargetTorque {
  readonly low: Exact
  readonly high: Exact
  readonly aim: Exact
  readonly unit: TorqueUnit
  /** The manual prints the nominal alone: a mark may be as far from it as the wrench itself may err. */
  readonly bare: boolean
}

/** A mark that can be set. */
interface ChosenMark {
  readonly index: number
  readonly scale: WrenchScale
  /** On the scale's own unit. */
  readonly value: Exact
  /** At the wrench, in the sheet's unit. */
  readonly torqueAtWrench: Exact
  readonly distance: Exact
}

export interface NearestMark {
  readonly taken?: ChosenMark
  /** Why each other scale has no mark to offer. */
  readonly refusals: readonly Reason[]
}

/**
 * In a band first a scale in the sheet's unit, which needs no conversion; then the mark nearest to the aim; then the lower
 * torque; for a bare nominal then the sheet's unit; then the order of the scales.
 */
function isBetterMark(first: ChosenMark, second: ChosenMark, { unit, bare }: TargetTorque): boolean {
  const own = Number(second.scale.unit === unit) - Number(first.scale.unit === unit)
  return (
    ((bare ? 0 : own) ||
      compareExact(first.distance, second.distance) ||
      compareExact(first.torqueAtWrench, second.torqueAtWrench) ||
      own) < 0
  )
}

/** The mark to set among all scales of a wrench. */
export function nearestMark(
  wrench: TorqueWrench,
  iso6789: '2017' | '2003',
  deviation: Deviation | undefined,
  target: TargetTorque,
  ratio: Exact,
): NearestMark {
  const refusals: Reason[] = []
  let taken: ChosenMark | undefined
  for (const [index, scale] of wrench.scales.entries()) {
    const perUnit = torqueRatio(scale.unit, target.unit)
    const onScale = (torque: Exact) => over(times(torque, ratio), perUnit)
    const aim = onScale(target.aim)
    // as far as the wrench itself may err; any distance where that is unknown
    const error = deviation
      ? times(deviation.of === 'reading' ? aim : exactOf(scale.highest), deviationPart(deviation))
      : aim
    const found = scaleMark(wrench, scale, iso6789, deviation, {
      low: onScale(target.low),
      high: onScale(target.high),
      aim,
      slack: target.bare ? error : exactOf(0),
      asQuantity: nearestTorque(target.aim, target.unit),
    })
    if (found.refusal) refusals.push(found.refusal)
    else if (found.mark) {
      const torqueAtWrench = times(found.mark, perUnit)
      const { n, d } = minus(torqueAtWrench, times(target.aim, ratio))
      const mark = { index, scale, value: found.mark, torqueAtWrench, distance: { n: n < 0n ? -n : n, d } }
      if (taken === undefined || isBetterMark(mark, taken, target)) taken = mark
    } else {
      const { unit } = scale
      refusals.push(
        torqueReason('torque/no-mark-inside', {
          band: { min: nearestTorque(target.low, target.unit), max: nearestTorque(target.high, target.unit) },
          unit,
          ...(target.bare && deviation && { error: deviation }),
          ...(found.below && { below: nearestTorque(found.below, unit) }),
          ...(found.above && { above: nearestTorque(found.above, unit) }),
        }),
      )
    }
  }
  return { refusals, ...(taken && { taken }) }
}
