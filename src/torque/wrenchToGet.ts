import type { Exact, Quantity, TorqueUnit } from '../quantity/index.js'
import { compareExact, exactOf, lowerExact, minus, over, readBand, times } from '../quantity/index.js'
import type { Tightening } from '../spec/index.js'
import { nearestTorque, torqueRatio } from './exactTorque.js'

/** A wrench of a usual range that would cover what the toolbox does not, in the unit of the sheet. */
export interface WrenchToGet {
  readonly from: Quantity<TorqueUnit>
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
  /** In N·m, as all here. */
  readonly lowest: Exact
  readonly highest: Exact
  /** The narrowest stated band; `undefined` where none is stated. */
  readonly width: Exact | undefined
  readonly unit: TorqueUnit
}

const lowestOf = (values: readonly Exact[]) => values.reduce(lowerExact)
const highestOf = (values: readonly Exact[]) =>
  values.reduce((one, next) => (lowerExact(one, next) === one ? next : one))
const narrowest = (widths: readonly Exact[]) => (widths.length === 0 ? undefined : lowestOf(widths))

/** The range that one task needs, over its final torque and its stages. */
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
  return [
    { task, lowest: lowestOf(aims), highest: highestOf(aims), width: narrowest(widths), unit: torque.unit },
  ]
}

/** Lowest marks of usual wrenches, times a power of ten: 5–25, 10–50, 20–100, 40–200. Common practice, no source. */
const LOWEST_MARKS = [1, 2, 4, 5]
const FIVE = exactOf(5)
/** Up to this, inch wrenches are marked in lbf·in. Common practice, no source. */
const SMALL_FOOT_POUNDS = exactOf(20)

/**
 * Wrenches that would cover tasks, as few as can be, each of a usual range whose high end is five times its low end, so
 * that every torque lies between 20 % and 100 % of full scale in either edition (house rule). A single task of stages
 * may be wider.
 */
export function wrenchesToGet(
  tasks: readonly UncoveredTask[],
  tolerancePercent: number | undefined,
): WrenchToGet[] {
  let left = tasks.flatMap((task) => neededRange(task, tolerancePercent))
  const ranges: WrenchToGet[] = []
  // from the highest down: a wrench takes every torque down to a fifth of its highest mark
  while (left.length > 0) {
    const to = highestOf(left.map((need) => need.highest))
    const unit = wrenchUnit(left.find((need) => need.highest === to)?.unit ?? 'N.m', to)
    const perUnit = torqueRatio(unit, 'N.m')
    const from = usualLowest(over(to, perUnit))
    const floor = times(from, perUnit)
    const group = left.filter((need) => compareExact(need.lowest, floor) >= 0 || need.highest === to)
    left = left.filter((need) => !group.includes(need))
    const lowest = over(lowestOf([floor, ...group.map((need) => need.lowest)]), perUnit)
    const step = narrowest(group.flatMap(({ width }) => width ?? []))
    ranges.unshift({
      from: nearestTorque(lowest, unit),
      to: nearestTorque(times(from, FIVE), unit),
      ...(step === undefined ? {} : { maxStep: nearestTorque(over(step, perUnit), unit) }),
      drives: [...new Set(group.flatMap(({ task }) => task.drive ?? []))],
      covers: group.map(({ task }) => task.on),
    })
  }
  return ranges
}

function wrenchUnit(unit: TorqueUnit, torque: Exact): TorqueUnit {
  const isSmall = compareExact(over(torque, torqueRatio('lbf.ft', 'N.m')), SMALL_FOOT_POUNDS) <= 0
  return unit === 'lbf.ft' && isSmall ? 'lbf.in' : unit
}

/** The lowest mark of the smallest usual wrench that reaches a torque. */
function usualLowest(torque: Exact): Exact {
  for (let power = -6; ; power += 1)
    for (const mark of LOWEST_MARKS) {
      const lowest = exactOf(`${mark}e${power}`)
      if (compareExact(torque, times(lowest, FIVE)) <= 0) return lowest
    }
}
