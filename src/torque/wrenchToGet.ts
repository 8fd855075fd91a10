import { compareExact, type Exact, minus, times } from '../quantity/exact.js'
import type { Quantity, TorqueUnit } from '../quantity/unit.js'
import type { Tightening } from '../spec/leaf.js'
import { exactOf, lower } from './exact.js'
import { torqueIn } from './exactTorque.js'
import { statedBand } from './statedBand.js'

/** A range that would cover what the toolbox does not. */
export interface WrenchToGet {
  /** The range's low end must be at or below this. */
  readonly from: Quantity<TorqueUnit>
  /** The range's high end must be at or above this. */
  readonly to: Quantity<TorqueUnit>
  /** A step of this or less puts a mark in every band; absent where no band is stated. */
  readonly stepAtMost?: Quantity<TorqueUnit>
  /** Square drives wanted, in order of the tasks. */
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
  readonly least: Exact
  readonly most: Exact
  readonly width?: Exact
}

function needOf(task: UncoveredTask, tolerancePercent: number | undefined): Need | undefined {
  if (task.tightening.kind !== 'torque') return undefined
  const { torque, stages = [] } = task.tightening
  let need: Need | undefined
  for (const value of [torque, ...stages]) {
    const stated = statedBand(value, tolerancePercent)
    if (stated.kind === 'one limit') return undefined
    const width = stated.kind === 'band' ? minus(stated.high, stated.low) : undefined
    const least = need ? lower(need.least, stated.aim) : stated.aim
    const most = need && compareExact(need.most, stated.aim) > 0 ? need.most : stated.aim
    const narrower = need?.width && width ? lower(need.width, width) : (need?.width ?? width)
    need = { task, least, most, ...(narrower ? { width: narrower } : {}) }
  }
  return need
}

/**
 * Ranges that would cover tasks, as few as can be with each range's high end at most five times its low end, so that
 * every torque lies between 20 % and 100 % of full scale in either edition (house rule). A single task of stages may
 * be wider. Internal.
 */
export function wrenchesToGet(
  tasks: readonly UncoveredTask[],
  tolerancePercent: number | undefined,
): WrenchToGet[] {
  const needs = tasks.flatMap((task) => needOf(task, tolerancePercent) ?? [])
  const order = new Map(tasks.map((task, at) => [task, at]))
  const sorted = [...needs].sort(
    (first, second) =>
      compareExact(first.most, second.most) || (order.get(first.task) ?? 0) - (order.get(second.task) ?? 0),
  )
  const groups: Need[][] = []
  // from the highest down: a group takes every torque down to a fifth of its highest
  while (sorted.length > 0) {
    const highest = sorted.at(-1)
    if (highest === undefined) break
    const floor = times(highest.most, exactOf('0.2'))
    const group = sorted.filter((need) => need === highest || compareExact(need.least, floor) >= 0)
    groups.unshift(group)
    for (const need of group) sorted.splice(sorted.indexOf(need), 1)
  }
  return groups.map((group) => {
    const inOrder = [...group].sort(
      (first, second) => (order.get(first.task) ?? 0) - (order.get(second.task) ?? 0),
    )
    const widths = group.flatMap(({ width }) => width ?? [])
    const least = group.map((need) => need.least).reduce(lower)
    const most = group
      .map((need) => need.most)
      .reduce((one, other) => (compareExact(one, other) >= 0 ? one : other))
    return {
      from: torqueIn(least, 'N.m'),
      to: torqueIn(most, 'N.m'),
      ...(widths.length === 0 ? {} : { stepAtMost: torqueIn(widths.reduce(lower), 'N.m') }),
      drives: [...new Set(inOrder.flatMap(({ task }) => task.drive ?? []))],
      covers: inOrder.map(({ task }) => task.on),
    }
  })
}
