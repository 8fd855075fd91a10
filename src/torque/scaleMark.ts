import type { Reason } from '../base/index.js'
import type { Exact, Quantity, TorqueUnit } from '../quantity/index.js'
import { compareExact, exactOf, lowerExact, minus, over, plus, roundExact, times } from '../quantity/index.js'
import type { TorqueWrench, WrenchScale } from '../spec/index.js'
import { torqueReason } from './codes.js'
import { exactTorque, nearestTorque } from './exactTorque.js'

/** The target torque at the wrench, in the unit of the scale, exactly. */
export interface TargetOnScale {
  readonly low: Exact
  readonly high: Exact
  readonly aim: Exact
  /** How far outside the band a mark may be, if the band is in the scale's range. */
  readonly slack: Exact
  /** The aim in the sheet's unit, for reasons. */
  readonly asQuantity: Quantity<TorqueUnit>
}

export interface Deviation {
  readonly percent: number
  readonly of: 'reading' | 'full scale'
}

/** The chosen mark; or why the target is out of range; or the marks on either side. All in the unit of the scale. */
export interface ScaleMark {
  readonly mark?: Exact
  readonly refusal?: Reason
  readonly below?: Exact
  readonly above?: Exact
}

export function deviationPart({ percent }: Deviation): Exact {
  return times(exactOf(percent), exactOf('0.01'))
}

const lowerCount = (first: bigint, second: bigint) => (first < second ? first : second)
const higherCount = (first: bigint, second: bigint) => (first > second ? first : second)

interface LowerEnd {
  readonly value: Exact
  /** The end itself is not usable. */
  readonly open?: boolean
  readonly reason: Reason
}

/** Every lower end that applies to this scale. */
function lowerEnds(
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
      open: scale.lowest === 0,
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
    const value = times(exactOf(scale.highest), exactOf('0.2'))
    ends.push({
      value,
      reason: torqueReason('torque/below-fifth-of-scale', {
        required,
        from: nearestTorque(value, unit),
        highest,
      }),
    })
  }
  if (deviation === undefined) return ends
  const part = deviationPart(deviation)
  if (deviation.of === 'full scale') {
    const error = times(exactOf(scale.highest), part)
    ends.push({
      value: error,
      open: true,
      reason: torqueReason('torque/error-as-large-as-setting', {
        required,
        error: nearestTorque(error, unit),
      }),
    })
  }
  if (wrench.type === 'electronic' && iso6789 === '2017') {
    const step = exactOf(scale.graduation)
    const allowed =
      deviation.of === 'reading'
        ? over(times(step, exactOf(4)), part)
        : fullScaleResolution(scale, part, step)
    ends.push({
      value: allowed,
      reason: torqueReason('torque/resolution-too-coarse', {
        required,
        from: nearestTorque(allowed, unit),
        step: { value: scale.graduation, unit },
      }),
    })
  }
  return ends
}

/** A quarter of a full-scale error is the same at every mark: either the whole scale is usable, or no mark is. */
function fullScaleResolution(scale: WrenchScale, part: Exact, step: Exact): Exact {
  const quarter = times(times(exactOf(scale.highest), part), exactOf('0.25'))
  return compareExact(step, quarter) <= 0 ? exactOf(0) : plus(exactOf(scale.highest), step)
}

/**
 * The mark of one scale nearest to the aim, inside the target band (or its slack) and the usable range; of two at the same
 * distance, the lower. Marks are the lowest plus whole steps, up to the highest.
 */
export function scaleMark(
  wrench: TorqueWrench,
  scale: WrenchScale,
  iso6789: '2017' | '2003',
  deviation: Deviation | undefined,
  target: TargetOnScale,
): ScaleMark {
  const step = exactOf(scale.graduation)
  const lowest = exactOf(scale.lowest)
  const mark = (count: bigint) => plus(lowest, times({ n: count, d: 1n }, step))
  const steps = (value: Exact) => over(minus(value, lowest), step)

  const required = target.asQuantity
  let highestUsable = exactOf(scale.highest)
  if (compareExact(target.low, highestUsable) > 0) {
    const highest = { value: scale.highest, unit: scale.unit }
    return { refusal: torqueReason('torque/above-highest-mark', { required, highest }) }
  }
  if (wrench.declaredRange !== undefined) {
    const { max } = wrench.declaredRange
    const declared = exactTorque(max, scale.unit)
    if (compareExact(target.low, declared) > 0)
      return { refusal: torqueReason('torque/above-declared-range', { required, to: max }) }
    highestUsable = lowerExact(highestUsable, declared)
  }
  const reach = lowerExact(target.high, highestUsable)
  let first = 0n
  for (const { value, open = false, reason } of lowerEnds(wrench, scale, iso6789, deviation, required)) {
    const side = compareExact(reach, value)
    if (side < 0 || (side === 0 && open)) return { refusal: reason }
    const usable = open ? roundExact(steps(value), 'down') + 1n : roundExact(steps(value), 'up')
    first = higherCount(first, usable)
  }
  const last = roundExact(steps(highestUsable), 'down')
  const from = higherCount(roundExact(steps(minus(target.low, target.slack)), 'up'), first)
  const to = lowerCount(roundExact(steps(plus(target.high, target.slack)), 'down'), last)
  if (from <= to) {
    // half a step down, then up: the nearest mark, and the lower of two at the same distance
    const nearest = roundExact(minus(steps(target.aim), exactOf('0.5')), 'up')
    return { mark: mark(higherCount(from, lowerCount(nearest, to))) }
  }
  // the band is between two marks: return those that are usable
  return { ...(to >= first && { below: mark(to) }), ...(from <= last && { above: mark(from) }) }
}
