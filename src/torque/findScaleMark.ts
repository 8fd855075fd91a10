import type { Reason } from '../base/index.js'
import type { Exact, Quantity, TorqueUnit } from '../quantity/index.js'
import {
  add,
  compareExact,
  divide,
  exactOf,
  minExact,
  multiply,
  roundExact,
  subtract,
} from '../quantity/index.js'
import type { TorqueWrench, WrenchScale } from '../spec/index.js'
import { torqueReason } from './codes.js'
import { exactTorque, findNearestTorque } from './exactTorque.js'

/** The target torque at the wrench, in the unit of the scale, exactly. */
export interface TargetOnScale {
  readonly low: Exact
  readonly high: Exact
  readonly aim: Exact
  /** The distance that a mark may be outside the band, if the band is in the scale's range. */
  readonly slack: Exact
  /** The aim in the sheet's unit, for reasons. */
  readonly asQuantity: Quantity<TorqueUnit>
}

export interface Deviation {
  readonly percent: number
  readonly of: 'reading' | 'full scale'
}

/**
 * The chosen mark, or a reason if the target is out of range, or the marks on either side. All in the unit of
 * the scale.
 */
export interface ScaleMark {
  readonly mark?: Exact
  readonly refusal?: Reason
  readonly below?: Exact
  readonly above?: Exact
}

export function deviationAsFraction({ percent }: Deviation): Exact {
  return multiply(exactOf(percent), exactOf('0.01'))
}

const minBigInt = (first: bigint, second: bigint) => (first < second ? first : second)
const maxBigInt = (first: bigint, second: bigint) => (first > second ? first : second)

interface LowerEnd {
  readonly value: Exact
  /** Whether the end itself is excluded. */
  readonly isOpen?: boolean
  readonly reason: Reason
}

/** Lists every lower end that applies to this scale. */
function listLowerEnds(
  wrench: TorqueWrench,
  scale: WrenchScale,
  iso6789: '2017' | '2003',
  deviation: Deviation | undefined,
  required: Quantity<TorqueUnit>,
): LowerEnd[] {
  const { unit } = scale
  const highest = { value: scale.highest, unit }
  const ends: LowerEnd[] = [
    {
      value: exactOf(scale.lowest),
      isOpen: scale.lowest === 0,
      reason: torqueReason('torque/below-lowest-mark', { required, lowest: { value: scale.lowest, unit } }),
    },
  ]
  const { declaredRange } = wrench
  if (declaredRange !== undefined) {
    ends.push({
      value: exactTorque(declaredRange.min, unit),
      reason: torqueReason('torque/below-declared-range', { required, from: declaredRange.min }),
    })
  } else if (iso6789 === '2003') {
    const value = multiply(exactOf(scale.highest), exactOf('0.2'))
    ends.push({
      value,
      reason: torqueReason('torque/below-fifth-of-scale', {
        required,
        from: findNearestTorque(value, unit),
        highest,
      }),
    })
  }
  if (deviation === undefined) return ends
  const part = deviationAsFraction(deviation)
  if (deviation.of === 'full scale') {
    const error = multiply(exactOf(scale.highest), part)
    ends.push({
      value: error,
      isOpen: true,
      reason: torqueReason('torque/error-as-large-as-setting', {
        required,
        error: findNearestTorque(error, unit),
      }),
    })
  }
  if (wrench.type === 'electronic' && iso6789 === '2017') {
    const step = exactOf(scale.graduation)
    const allowed =
      deviation.of === 'reading'
        ? divide(multiply(step, exactOf(4)), part)
        : findResolutionLimit(scale, part, step)
    ends.push({
      value: allowed,
      reason: torqueReason('torque/resolution-too-coarse', {
        required,
        from: findNearestTorque(allowed, unit),
        step: { value: scale.graduation, unit },
      }),
    })
  }
  return ends
}

/** A quarter of a full-scale error is the same at every mark: either the whole scale is usable, or no mark is. */
function findResolutionLimit(scale: WrenchScale, part: Exact, step: Exact): Exact {
  const quarterOfError = multiply(multiply(exactOf(scale.highest), part), exactOf('0.25'))
  return compareExact(step, quarterOfError) <= 0 ? exactOf(0) : add(exactOf(scale.highest), step)
}

/**
 * Finds the mark of one scale nearest to the aim, inside the target band (or its slack) and the usable range;
 * of two at the same distance, the lower. Marks are the lowest mark plus whole steps, up to the highest.
 */
export function findScaleMark(
  wrench: TorqueWrench,
  scale: WrenchScale,
  iso6789: '2017' | '2003',
  deviation: Deviation | undefined,
  target: TargetOnScale,
): ScaleMark {
  const step = exactOf(scale.graduation)
  const lowest = exactOf(scale.lowest)
  const mark = (count: bigint) => add(lowest, multiply({ n: count, d: 1n }, step))
  const countSteps = (value: Exact) => divide(subtract(value, lowest), step)

  const required = target.asQuantity
  let highestUsable = exactOf(scale.highest)
  if (compareExact(target.low, highestUsable) > 0) {
    const highest = { value: scale.highest, unit: scale.unit }
    return { refusal: torqueReason('torque/above-highest-mark', { required, highest }) }
  }
  if (wrench.declaredRange !== undefined) {
    const { max } = wrench.declaredRange
    const declaredMax = exactTorque(max, scale.unit)
    if (compareExact(target.low, declaredMax) > 0)
      return { refusal: torqueReason('torque/above-declared-range', { required, to: max }) }
    highestUsable = minExact(highestUsable, declaredMax)
  }
  const highestReachable = minExact(target.high, highestUsable)
  let first = 0n
  for (const { value, isOpen = false, reason } of listLowerEnds(
    wrench,
    scale,
    iso6789,
    deviation,
    required,
  )) {
    const side = compareExact(highestReachable, value)
    if (side < 0 || (side === 0 && isOpen)) return { refusal: reason }
    const firstUsable = isOpen
      ? roundExact(countSteps(value), 'down') + 1n
      : roundExact(countSteps(value), 'up')
    first = maxBigInt(first, firstUsable)
  }
  const last = roundExact(countSteps(highestUsable), 'down')
  const from = maxBigInt(roundExact(countSteps(subtract(target.low, target.slack)), 'up'), first)
  const to = minBigInt(roundExact(countSteps(add(target.high, target.slack)), 'down'), last)
  if (from <= to) {
    // subtracting half a step and rounding up gives the nearest mark, or the lower of two at the same distance
    const nearestStep = roundExact(subtract(countSteps(target.aim), exactOf('0.5')), 'up')
    return { mark: mark(maxBigInt(from, minBigInt(nearestStep, to))) }
  }
  // the band is between two marks: return the usable ones
  return { ...(to >= first && { below: mark(to) }), ...(from <= last && { above: mark(from) }) }
}
