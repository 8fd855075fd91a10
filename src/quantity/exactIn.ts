import { type Exact, exactOf } from './exact.js'
import { findNearestDouble } from './findNearestDouble.js'
import { convertExact } from './findUnitPair.js'
import type { PrintedQuantity, Quantity, Unit } from './unit.js'

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
