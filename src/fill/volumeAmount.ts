import type { NumberRange } from '../base/index.js'
import type { Exact, Measure, PrintedQuantity, Quantity, VolumeUnit } from '../quantity/index.js'
import { exactIn, findNearestQuantity, requireQuantity } from '../quantity/index.js'

/** A volume from a sheet (a printed figure) or from stock, toolbox or record (a number). */
export type VolumeAmount = Quantity<VolumeUnit> | PrintedQuantity<VolumeUnit>

/** Converts exact millilitres to a quantity in a unit, rounded to the nearest double. */
export function volumeFromMillilitres<U extends VolumeUnit>(millilitres: Exact, unit: U): Quantity<U> {
  return findNearestQuantity(millilitres, 'mL', unit)
}

/**
 * Writes volumes as whole multiples of a small part of a millilitre, so that sums and comparisons of mixed
 * units are exact (a US quart is 946.352946 mL).
 */
export function toWholeParts(volumes: readonly VolumeAmount[]): { parts: bigint[]; perMillilitre: bigint } {
  const exact = volumes.map((volume) => exactIn(volume, 'mL'))
  // denominators of volumes are powers of ten, so the largest is a multiple of the others
  let perMillilitre = 1n
  for (const { d } of exact) if (d > perMillilitre) perMillilitre = d
  return { parts: exact.map(({ n, d }) => (n * perMillilitre) / d), perMillilitre }
}

/** Compares two whole numbers for sorting. */
export function compareBigInts(first: bigint, second: bigint): number {
  return first < second ? -1 : first > second ? 1 : 0
}

/** More than any sum of a document's numbers, in any unit. */
const MAX_AMOUNT = 1e15

/** Throws if the argument is not an amount of the measure in the range; without a range, from 0. */
export function requireAmount(
  name: string,
  amount: unknown,
  measure: Measure,
  range: NumberRange & { readonly figure?: true } = {},
): void {
  requireQuantity(name, amount, measure, { min: 0, max: MAX_AMOUNT, ...range })
}
