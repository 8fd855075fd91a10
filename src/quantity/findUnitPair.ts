import { quoteValue } from '../base/index.js'
import { add, divide, type Exact, exactOf, multiply, subtract } from './exact.js'
import { isUnit, measureOf } from './measureOf.js'
import { UNIT_FACTORS, type Unit } from './unit.js'
import { TEMPERATURE_SHIFTS } from './unitFactors.js'

/** to = from × `ratio` + `offset`, exactly. */
export interface UnitPair {
  readonly ratio: Exact
  readonly offset: Exact
}

/** The exact conversion between two units of one measure; throws TypeError for other units. */
export function findUnitPair(from: Unit, to: Unit): UnitPair {
  if (!isUnit(from)) throw new TypeError(`unit must be a unit id such as 'N.m', got ${quoteValue(from)}`)
  if (!isUnit(to)) throw new TypeError(`to must be a unit id such as 'N.m', got ${quoteValue(to)}`)
  if (measureOf(from) !== measureOf(to)) {
    throw new TypeError(
      `to must be a unit of ${measureOf(from)} like '${from}', got '${to}', a unit of ${measureOf(to)}`,
    )
  }
  const ratio = divide(exactOf(UNIT_FACTORS[from]), exactOf(UNIT_FACTORS[to]))
  const shift = (unit: Unit) => exactOf(TEMPERATURE_SHIFTS[unit] ?? 0)
  return { ratio, offset: subtract(multiply(shift(from), ratio), shift(to)) }
}

/** Converts a value exactly. */
export function convertExact(value: Exact, from: Unit, to: Unit): Exact {
  if (from === to && isUnit(from)) return value
  const { ratio, offset } = findUnitPair(from, to)
  return add(multiply(value, ratio), offset)
}
