import { figureOf } from './figureOf.js'
import type { Figure } from './unit.js'

/**
 * The number nearest to a printed figure, for calculations that work in doubles. To compare two figures use
 * {@link compareQuantities}, since `0.1` has no exact double.
 *
 * @param figure - a printed figure; a minus is allowed
 * @returns the nearest double
 * @throws TypeError when `figure` is no figure
 *
 * Source: house rule, a figure means its decimal value.
 *
 * @example
 * ```ts
 * import { figureToNumber } from 'drivetrain-service/v1/quantity'
 * // Which number is the figure `10.0`?
 * figureToNumber('10.0') // => 10
 * ```
 */
export function figureToNumber(figure: Figure): number {
  figureOf(figure)
  return Number(figure) + 0
}
