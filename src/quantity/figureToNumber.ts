import { requireFigure } from './requireFigure.js'
import type { Figure } from './unit.js'

/**
 * The number nearest to a printed figure, for calculations with doubles. To compare two figures, use
 * {@link compareQuantities}, since `0.1` has no exact double.
 */
export function figureToNumber(figure: Figure): number {
  requireFigure(figure)
  return Number(figure) + 0
}
