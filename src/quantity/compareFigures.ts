import { compareExact } from './exact.js'
import { figureOf } from './figureOf.js'
import type { Figure } from './unit.js'

/**
 * Which of two figures in the same unit is larger, by their decimal values. For figures in different units use
 * {@link compareQuantities}.
 */
export function compareFigures(first: Figure, second: Figure): -1 | 0 | 1 {
  return compareExact(figureOf(first, 'first'), figureOf(second, 'second'))
}
