import type { Exact, Quantity, TorqueUnit } from '../quantity/index.js'
import { compareExact, divide, exactOf, minExact, multiply, readBand, subtract } from '../quantity/index.js'
import type { Tightening } from '../spec/index.js'
import { findNearestTorque, findTorqueRatio } from './exactTorque.js'

/** A wrench of a usual range for tasks that no wrench in the toolbox covers, in the unit of the sheet. */
export interface WrenchToGet {
  readonly from: Quantity<TorqueUnit>
  readonly to: Quantity<TorqueUnit>
  /** Maximum step with which every band contains a mark; absent if no band is stated. */
  readonly maxStep?: Quantity<TorqueUnit>
  /** Square drives needed, in order of the tasks. */
  readonly drives: readonly string[]
  /** The `on` of each task, in order. */
  readonly covers: readonly string[]
}

export interface UncoveredTask {
  readonly on: string
  readonly tightening: Tightening
  readonly drive?: string
}

interface NeededRange {
  readonly task: UncoveredTask
  /** In N·m, as are `highest` and `width`. */
  readonly lowest: Exact
  readonly highest: Exact
  /** Width of the narrowest stated band; `undefined` if no band is stated. */
  readonly width: Exact | undefined
  readonly unit: TorqueUnit
}

const findLowest = (values: readonly Exact[]) => values.reduce(minExact)
const findHighest = (values: readonly Exact[]) =>
  values.reduce((highestSoFar, next) => (minExact(highestSoFar, next) === highestSoFar ? next : highestSoFar))
const findNarrowest = (bandWidths: readonly Exact[]) =>
  bandWidths.length === 0 ? undefined : findLowest(bandWidths)

/** The range that one task needs for its final torque and its stages. */
function findNeededRanges(task: UncoveredTask, tolerancePercent: number | undefined): NeededRange[] {
  if (task.tightening.kind !== 'torque') return []
  const { torque, stages = [] } = task.tightening
  const aims: Exact[] = []
  const bandWidths: Exact[] = []
  for (const value of [torque, ...stages]) {
    const band = readBand(value, 'N.m', tolerancePercent)
    if (band.basis === 'one limit') return []
    aims.push(band.aim)
    if (band.basis !== 'nominal') bandWidths.push(subtract(band.high, band.low))
  }
  return [
    {
      task,
      lowest: findLowest(aims),
      highest: findHighest(aims),
      width: findNarrowest(bandWidths),
      unit: torque.unit,
    },
  ]
}

/** Lowest marks of usual wrenches, times a power of ten: 5–25, 10–50, 20–100, 40–200. Common practice, no source. */
const LOWEST_MARKS = [1, 2, 4, 5]
const RANGE_RATIO = exactOf(5)
/** In lbf·ft. Wrenches for smaller torques are marked in lbf·in. Common practice, no source. */
const MAX_INCH_POUND_RANGE = exactOf(20)

/**
 * Chooses the fewest wrenches that would cover the tasks. House rule: the highest mark is five times the
 * lowest, so that every torque is between 20 % and 100 % of full scale. One task with stages may need a wider
 * range.
 */
export function chooseWrenchesToBuy(
  tasks: readonly UncoveredTask[],
  tolerancePercent: number | undefined,
): WrenchToGet[] {
  let remaining = tasks.flatMap((task) => findNeededRanges(task, tolerancePercent))
  const ranges: WrenchToGet[] = []
  // start with the highest torque: a wrench covers every torque down to a fifth of its highest mark
  while (remaining.length > 0) {
    const to = findHighest(remaining.map((need) => need.highest))
    const unit = chooseWrenchUnit(remaining.find((need) => need.highest === to)?.unit ?? 'N.m', to)
    const perUnit = findTorqueRatio(unit, 'N.m')
    const from = findUsualLowestMark(divide(to, perUnit))
    const floor = multiply(from, perUnit)
    const group = remaining.filter((need) => compareExact(need.lowest, floor) >= 0 || need.highest === to)
    remaining = remaining.filter((need) => !group.includes(need))
    const lowest = divide(findLowest([floor, ...group.map((need) => need.lowest)]), perUnit)
    const step = findNarrowest(group.flatMap(({ width }) => width ?? []))
    ranges.unshift({
      from: findNearestTorque(lowest, unit),
      to: findNearestTorque(multiply(from, RANGE_RATIO), unit),
      ...(step === undefined ? {} : { maxStep: findNearestTorque(divide(step, perUnit), unit) }),
      drives: [...new Set(group.flatMap(({ task }) => task.drive ?? []))],
      covers: group.map(({ task }) => task.on),
    })
  }
  return ranges
}

function chooseWrenchUnit(unit: TorqueUnit, torque: Exact): TorqueUnit {
  const isSmall = compareExact(divide(torque, findTorqueRatio('lbf.ft', 'N.m')), MAX_INCH_POUND_RANGE) <= 0
  return unit === 'lbf.ft' && isSmall ? 'lbf.in' : unit
}

/** The lowest mark of the smallest usual wrench that reaches a torque. */
function findUsualLowestMark(torque: Exact): Exact {
  for (let powerOfTen = -6; ; powerOfTen += 1)
    for (const mark of LOWEST_MARKS) {
      const lowest = exactOf(`${mark}e${powerOfTen}`)
      if (compareExact(torque, multiply(lowest, RANGE_RATIO)) <= 0) return lowest
    }
}
