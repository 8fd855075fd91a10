import { compareExact } from './exact.js'
import { figureOf } from './figureOf.js'
import type { Figure } from './unit.js'

/** Compares two figures of the same unit by their decimal values; for different units use {@link compareQuantities}. */
export function compareFigures(first: Figure, second: Figure): -1 | 0 | 1 {
  return compareExact(figureOf(first, 'first'), figureOf(second, 'second'))
}
