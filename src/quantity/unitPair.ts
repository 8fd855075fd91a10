import { quoteValue } from '../base/index.js'
import { type Exact, exactOf, minus, over, plus, times } from './exact.js'
import { isUnit } from './isUnit.js'
import { measureOf } from './measureOf.js'
import { UNIT_FACTORS, type Unit } from './unit.js'
import { SHIFTS } from './unitFactors.js'

/** to = from × `ratio` + `offset`, exactly. */
export interface UnitPair {
  readonly ratio: Exact
  readonly offset: Exact
}

/** The exact conversion between two units of one measure; throws TypeError for other units. */
export function unitPair(from: Unit, to: Unit): UnitPair {
  if (!isUnit(from)) throw new TypeError(`unit must be a unit id such as 'N.m', got ${quoteValue(from)}`)
  if (!isUnit(to)) throw new TypeError(`to must be a unit id such as 'N.m', got ${quoteValue(to)}`)
  if (measureOf(from) !== measureOf(to)) {
    throw new TypeError(
      `to must be a unit of ${measureOf(from)}, as '${from}' is; got '${to}', a unit of ${measureOf(to)}`,
    )
  }
  const ratio = over(exactOf(UNIT_FACTORS[from]), exactOf(UNIT_FACTORS[to]))
  const shift = (unit: Unit) => exactOf(SHIFTS[unit] ?? 0)
  return { ratio, offset: minus(times(shift(from), ratio), shift(to)) }
}

/** Converts a value exactly. */
export function exactlyIn(value: Exact, from: Unit, to: Unit): Exact {
  if (from === to && isUnit(from)) return value
  const { ratio, offset } = unitPair(from, to)
  return plus(times(value, ratio), offset)
}
