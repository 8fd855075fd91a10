import { compareExact } from './exact.js'
import { requireFigure } from './requireFigure.js'
import type { Figure } from './unit.js'

/** Compares two figures of the same unit by their decimal values; for different units use {@link compareQuantities}. */
export function compareFigures(first: Figure, second: Figure): -1 | 0 | 1 {
  return compareExact(requireFigure(first, 'first'), requireFigure(second, 'second'))
}
