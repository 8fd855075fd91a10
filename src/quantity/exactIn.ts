import { type Exact, exactOf } from './exact.js'
import { findNearestDouble } from './findNearestDouble.js'
import { convertExact } from './findUnitPair.js'
import type { PrintedQuantity, Quantity, Unit } from './unit.js'

/** The exact number of `to` in a quantity (a figure, or a JSON number by its shortest decimal). */
export function exactIn({ value, unit }: Quantity | PrintedQuantity, to: Unit): Exact {
  return convertExact(exactOf(value), unit, to)
}

/** Converts an exact number of `from` to a quantity in `unit`, rounded once. */
export function findNearestQuantity<U extends Unit>(value: Exact, from: Unit, unit: U): Quantity<U> {
  return { value: findNearestDouble(convertExact(value, from, unit)), unit }
}
