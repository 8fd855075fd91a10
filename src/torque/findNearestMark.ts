import type { Reason } from '../base/index.js'
import type { Exact, TorqueUnit } from '../quantity/index.js'
import { compareExact, divide, exactOf, multiply, subtract } from '../quantity/index.js'
import type { TorqueWrench, WrenchScale } from '../spec/index.js'
import { torqueReason } from './codes.js'
import { findNearestTorque, findTorqueRatio } from './exactTorque.js'
import { type Deviation, deviationAsFraction, findScaleMark } from './findScaleMark.js'

/** The target band at the fastener, exactly, in the sheet's unit. */
export interface TargetTorque {
  readonly low: Exact
  readonly high: Exact
  readonly aim: Exact
  readonly unit: TorqueUnit
  /**
   * The manual prints no tolerance: a mark may differ from the nominal by the wrench's permissible error.
   */
  readonly isNominalOnly: boolean
}

interface ChosenMark {
  readonly index: number
  readonly scale: WrenchScale
  /** In the unit of the scale. */
  readonly value: Exact
  /** At the wrench, in the sheet's unit. */
  readonly torqueAtWrench: Exact
  readonly distance: Exact
}

export interface NearestMark {
  readonly chosen?: ChosenMark
  /** The reason for each scale without a usable mark. */
  readonly refusals: readonly Reason[]
}

/**
 * Prefers the mark nearest to the aim, then the lower torque. A scale in the sheet's unit, which needs no
 * conversion, comes first if there is a band, and last if there is only a nominal.
 */
function isBetterMark(first: ChosenMark, second: ChosenMark, { unit, isNominalOnly }: TargetTorque): boolean {
  const unitOrder = Number(second.scale.unit === unit) - Number(first.scale.unit === unit)
  return (
    ((isNominalOnly ? 0 : unitOrder) ||
      compareExact(first.distance, second.distance) ||
      compareExact(first.torqueAtWrench, second.torqueAtWrench) ||
      unitOrder) < 0
  )
}

/** Finds the mark to set among all scales of a wrench. */
export function findNearestMark(
  wrench: TorqueWrench,
  iso6789: '2017' | '2003',
  deviation: Deviation | undefined,
  target: TargetTorque,
  ratio: Exact,
): NearestMark {
  const refusals: Reason[] = []
  let chosen: ChosenMark | undefined
  for (const [index, scale] of wrench.scales.entries()) {
    const perUnit = findTorqueRatio(scale.unit, target.unit)
    const toScale = (torque: Exact) => divide(multiply(torque, ratio), perUnit)
    const aim = toScale(target.aim)
    // the wrench's permissible error; any distance if it is not known
    const error = deviation
      ? multiply(deviation.of === 'reading' ? aim : exactOf(scale.highest), deviationAsFraction(deviation))
      : aim
    const scaleMark = findScaleMark(wrench, scale, iso6789, deviation, {
      low: toScale(target.low),
      high: toScale(target.high),
      aim,
      slack: target.isNominalOnly ? error : exactOf(0),
      asQuantity: findNearestTorque(target.aim, target.unit),
    })
    if (scaleMark.refusal) refusals.push(scaleMark.refusal)
    else if (scaleMark.mark) {
      const torqueAtWrench = multiply(scaleMark.mark, perUnit)
      const { n, d } = subtract(torqueAtWrench, multiply(target.aim, ratio))
      const mark = {
        index,
        scale,
        value: scaleMark.mark,
        torqueAtWrench,
        distance: { n: n < 0n ? -n : n, d },
      }
      if (chosen === undefined || isBetterMark(mark, chosen, target)) chosen = mark
    } else {
      const { unit } = scale
      refusals.push(
        torqueReason('torque/no-mark-in-band', {
          band: {
            min: findNearestTorque(target.low, target.unit),
            max: findNearestTorque(target.high, target.unit),
          },
          unit,
          ...(target.isNominalOnly && deviation && { error: deviation }),
          ...(scaleMark.below && { below: findNearestTorque(scaleMark.below, unit) }),
          ...(scaleMark.above && { above: findNearestTorque(scaleMark.above, unit) }),
        }),
      )
    }
  }
  return { refusals, ...(chosen && { chosen }) }
}
