import { compareExact } from './exact.js'
import { figureOf } from './figureOf.js'
import type { Figure } from './unit.js'

/**
 * Which of two figures in the same unit is larger, by their decimal values. For figures in different units use
 * {@link compareQuantities}.
 *
 * @param first - a printed figure
 * @param second - another
 * @returns −1, 0 or 1; `10.0` equals `10`
 * @throws TypeError when one is no figure
 *
 * Source: house rule, a figure means its decimal value.
 *
 * @example
 * ```ts
 * import { compareFigures } from 'drivetrain-service/v1/quantity'
 * // Is `9.8` less than `10`?
 * compareFigures('9.8', '10') // => -1
 * ```
 */
export function compareFigures(first: Figure, second: Figure): -1 | 0 | 1 {
  return compareExact(figureOf(first, 'first'), figureOf(second, 'second'))
}
