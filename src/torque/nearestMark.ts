import type { Reason } from '../base/index.js'
import {
  compareExact,
  type Exact,
  minus,
  nearestDouble,
  over,
  type TorqueUnit,
  times,
} from '../quantity/index.js'
import type { TorqueWrench, WrenchScale } from '../spec/index.js'
import { torqueReason } from './codes.js'
import { newtonMetresIn, torqueIn } from './exactTorque.js'
import { type Deviation, scaleMark } from './scaleMark.js'

/** The target band at the fastener, in N·m, exactly; `unit` is the sheet's own. */
export interface TargetTorque {
  readonly low: Exact
  readonly high: Exact
  readonly aim: Exact
  readonly unit: TorqueUnit
}

/** A mark that can be set. */
interface MarkTaken {
  readonly index: number
  readonly scale: WrenchScale
  /** On the scale's own unit. */
  readonly value: Exact
  /** At the wrench. */
  readonly newtonMetres: Exact
  readonly distance: Exact
}

export interface NearestMark {
  readonly taken?: MarkTaken
  /** Why each other scale has no mark to offer. */
  readonly refusals: readonly Reason[]
  /** Some scale's range holds the torque, and only its marks miss it. */
  readonly betweenMarks: boolean
}

/** Nearest to the aim; then the lower torque; then the sheet's own unit; then the order of the scales. */
function better(first: MarkTaken, second: MarkTaken, unit: TorqueUnit): boolean {
  const nearer = compareExact(first.distance, second.distance)
  if (nearer !== 0) return nearer < 0
  const less = compareExact(first.newtonMetres, second.newtonMetres)
  if (less !== 0) return less < 0
  return first.scale.unit === unit && second.scale.unit !== unit
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
  let taken: MarkTaken | undefined
  let betweenMarks = false
  for (const [index, scale] of wrench.scales.entries()) {
    const perUnit = newtonMetresIn(scale.unit)
    const onScale = (newtonMetres: Exact) => over(times(newtonMetres, ratio), perUnit)
    const found = scaleMark(wrench, scale, iso6789, deviation, {
      low: onScale(target.low),
      high: onScale(target.high),
      aim: onScale(target.aim),
      asQuantity: torqueIn(target.aim, target.unit),
    })
    if (found.kind === 'out of range') refusals.push(found.reason)
    else if (found.kind === 'mark') {
      const newtonMetres = times(found.value, perUnit)
      const { n, d } = minus(newtonMetres, times(target.aim, ratio))
      const mark = { index, scale, value: found.value, newtonMetres, distance: { n: n < 0n ? -n : n, d } }
      if (taken === undefined || better(mark, taken, target.unit)) taken = mark
    } else {
      betweenMarks = true
      const { unit } = scale
      refusals.push(
        torqueReason('torque/no-mark-inside', {
          band: { min: torqueIn(target.low, target.unit), max: torqueIn(target.high, target.unit) },
          unit,
          ...(found.below ? { below: { value: nearestDouble(found.below), unit } } : {}),
          ...(found.above ? { above: { value: nearestDouble(found.above), unit } } : {}),
        }),
      )
    }
  }
  return { refusals, betweenMarks, ...(taken ? { taken } : {}) }
}
