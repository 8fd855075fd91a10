import { quoteValue } from '../base/index.js'
import { add, divide, type Exact, exactOf, findNearestDouble, multiply, subtract } from './exact.js'
import { isUnit, measureOf } from './measureOf.js'
import { type PrintedQuantity, type Quantity, UNIT_FACTORS, type Unit } from './unit.js'
import { TEMPERATURE_SHIFTS } from './unitFactors.js'

/** to = from × `ratio` + `offset`, exactly. */
export interface UnitPair {
  readonly ratio: Exact
  readonly offset: Exact
}

const knownPairs = new Map<string, UnitPair>()

/** The exact conversion between two units of one measure; throws TypeError for other units. */
export function findUnitPair(from: Unit, to: Unit): UnitPair {
  if (!isUnit(from)) throw new TypeError(`unit must be a unit id such as 'N.m', got ${quoteValue(from)}`)
  if (!isUnit(to)) throw new TypeError(`to must be a unit id such as 'N.m', got ${quoteValue(to)}`)
  const name = `${from} ${to}`
  let pair = knownPairs.get(name)
  if (pair === undefined) {
    if (measureOf(from) !== measureOf(to)) {
      throw new TypeError(
        `to must be a unit of ${measureOf(from)} like '${from}', got '${to}', a unit of ${measureOf(to)}`,
      )
    }
    const ratio = divide(exactOf(UNIT_FACTORS[from]), exactOf(UNIT_FACTORS[to]))
    const shift = (unit: Unit) => exactOf(TEMPERATURE_SHIFTS[unit] ?? 0)
    pair = { ratio, offset: subtract(multiply(shift(from), ratio), shift(to)) }
    knownPairs.set(name, pair)
  }
  return pair
}

/** Converts a value exactly. */
export function convertExact(value: Exact, from: Unit, to: Unit): Exact {
  if (from === to && isUnit(from)) return value
  const { ratio, offset } = findUnitPair(from, to)
  return add(multiply(value, ratio), offset)
}

/** The exact value of a quantity in the unit `to` (a figure, or a JSON number by its shortest decimal). */
export function exactIn({ value, unit }: Quantity | PrintedQuantity, to: Unit): Exact {
  return convertExact(exactOf(value), unit, to)
}

/** Converts an exact value in the unit `from` to a quantity in `unit`, rounded once. */
export function findNearestQuantity<U extends Unit>(value: Exact, from: Unit, unit: U): Quantity<U> {
  return { value: findNearestDouble(convertExact(value, from, unit)), unit }
}

/**
 * Converts an amount of a document (figure or JSON number): 1.001 L is 1001 mL. It accepts every amount of a
 * document; {@link convert} uses the binary value of a number, and throws below the normal doubles.
 */
export function convertAmount<U extends Unit>(amount: Quantity | PrintedQuantity, unit: U): Quantity<U> {
  return findNearestQuantity(exactIn(amount, unit), unit, unit)
}
