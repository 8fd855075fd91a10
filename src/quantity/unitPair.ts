import { shown } from '../base/index.js'
import { type Exact, exactOf, minus, over, plus, times } from './exact.js'
import { isUnit } from './isUnit.js'
import { measureOf } from './measureOf.js'
import type { Unit } from './unit.js'
import { UNIT_FACTORS } from './unitFactors.js'

/** to = from × `ratio` + `offset`, exactly. */
export interface UnitPair {
  readonly ratio: Exact
  readonly offset: Exact
}

/** The exact step from one unit to another of its measure; throws TypeError for anything else. */
export function unitPair(from: Unit, to: Unit): UnitPair {
  if (!isUnit(from)) throw new TypeError(`unit must be a unit id such as 'N.m', got ${shown(from)}`)
  if (!isUnit(to)) throw new TypeError(`to must be a unit id such as 'N.m', got ${shown(to)}`)
  if (measureOf(from) !== measureOf(to)) {
    throw new TypeError(
      `to must be a unit of ${measureOf(from)}, as '${from}' is; got '${to}', which is of ${measureOf(to)}`,
    )
  }
  const { factor, shift = '0' } = UNIT_FACTORS[from]
  const target = UNIT_FACTORS[to]
  const ratio = over(exactOf(factor), exactOf(target.factor))
  return { ratio, offset: minus(times(exactOf(shift), ratio), exactOf(target.shift ?? '0')) }
}

/** A value taken exactly from one unit to another. */
export function exactlyIn(value: Exact, from: Unit, to: Unit): Exact {
  if (from === to && isUnit(from)) return value
  const { ratio, offset } = unitPair(from, to)
  return plus(times(value, ratio), offset)
}
