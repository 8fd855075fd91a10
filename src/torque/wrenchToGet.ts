import type { Exact, Quantity, TorqueUnit } from '../quantity/index.js'
import { compareExact, exactOf, lowerExact, minus, readBand, times } from '../quantity/index.js'
import type { Tightening } from '../spec/index.js'
import { nearestTorque } from './exactTorque.js'

/** A range that would cover what the toolbox does not. */
export interface WrenchToGet {
  /** The range's low end must be at or below this. */
  readonly from: Quantity<TorqueUnit>
  /** The range's high end must be at or above this. */
  readonly to: Quantity<TorqueUnit>
  /** A step of this or less puts a mark in every band; absent where no band is stated. */
  readonly maxStep?: Quantity<TorqueUnit>
  /** Square drives needed, in order of the tasks. */
  readonly drives: readonly string[]
  /** The tasks' `on`, in order. */
  readonly covers: readonly string[]
}

export interface UncoveredTask {
  readonly on: string
  readonly tightening: Tightening
  readonly drive?: string
}

interface Need {
  readonly task: UncoveredTask
  readonly lowest: Exact
  readonly highest: Exact
  /** The narrowest stated band; `undefined` where none is stated. */
  readonly width: Exact | undefined
}

const lowestOf = (values: readonly Exact[]) => values.reduce(lowerExact)
const highestOf = (values: readonly Exact[]) =>
  values.reduce((one, next) => (lowerExact(one, next) === one ? next : one))
const narrowest = (widths: readonly Exact[]) => (widths.length === 0 ? undefined : lowestOf(widths))

/** What one task asks for over its final torque and its stages. */
function neededRange(task: UncoveredTask, tolerancePercent: number | undefined): Need[] {
  if (task.tightening.kind !== 'torque') return []
  const { torque, stages = [] } = task.tightening
  const aims: Exact[] = []
  const widths: Exact[] = []
  for (const value of [torque, ...stages]) {
    const stated = readBand(value, 'N.m', tolerancePercent)
    if (stated.basis === 'one limit') return []
    aims.push(stated.aim)
    if (stated.basis !== 'nominal') widths.push(minus(stated.high, stated.low))
  }
  return [{ task, lowest: lowestOf(aims), highest: highestOf(aims), width: narrowest(widths) }]
}

/**
 * Ranges that would cover tasks, as few as can be with each range's high end at most five times its low end, so that
 * every torque lies between 20 % and 100 % of full scale in either edition (house rule). A single task of stages may
 * be wider.
 */
export function wrenchesToGet(
  tasks: readonly UncoveredTask[],
  tolerancePercent: number | undefined,
): WrenchToGet[] {
  let left = tasks.flatMap((task) => neededRange(task, tolerancePercent))
  const ranges: WrenchToGet[] = []
  // from the highest down: a range takes every torque down to a fifth of its highest
  while (left.length > 0) {
    const to = highestOf(left.map((need) => need.highest))
    const floor = times(to, exactOf('0.2'))
    const group = left.filter(
      (need) => compareExact(need.lowest, floor) >= 0 || compareExact(need.highest, to) === 0,
    )
    left = left.filter((need) => !group.includes(need))
    ranges.unshift(rangeOf(group, to))
  }
  return ranges
}

function rangeOf(group: readonly Need[], to: Exact): WrenchToGet {
  const step = narrowest(group.flatMap(({ width }) => width ?? []))
  return {
    from: nearestTorque(lowestOf(group.map((need) => need.lowest)), 'N.m'),
    to: nearestTorque(to, 'N.m'),
    ...(step === undefined ? {} : { maxStep: nearestTorque(step, 'N.m') }),
    drives: [...new Set(group.flatMap(({ task }) => task.drive ?? []))],
    covers: group.map(({ task }) => task.on),
  }
}
