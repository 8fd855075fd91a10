import { quoteValue } from '../base/index.js'
import { type Exact, exactOf } from './exact.js'
import type { Figure } from './unit.js'

/** The exact value of a figure that a caller passed; throws TypeError for anything else. */
export function requireFigure(figure: unknown, name = 'figure', minus = true): Exact {
  if (isFigure(figure, { minus })) return exactOf(figure)
  throw new TypeError(
    `${name} must be a decimal string of at most 9 whole digits and 6 decimals such as '10.0', got ${quoteValue(figure)}`,
  )
}

/** The number of printed decimals of a figure. */
export function countDecimals(figure: string): number {
  const point = figure.indexOf('.')
  return point < 0 ? 0 : figure.length - point - 1
}

/**
 * The number nearest to a printed figure, for calculations with doubles. To compare two figures, use
 * {@link compareQuantities}, since `0.1` has no exact double.
 */
export function figureToNumber(figure: Figure): number {
  requireFigure(figure)
  return Number(figure) + 0
}

const FIGURE = /^-?(0|[1-9]\d{0,8})(\.\d{1,6})?$/

/**
 * Whether a text is a figure as stored in documents, such as `10.0`: printed digits, no exponent, no group
 * marks. To read other spellings, use {@link parseQuantity}.
 */
export function isFigure(text: unknown, options?: { readonly minus?: boolean }): text is Figure {
  return typeof text === 'string' && FIGURE.test(text) && (options?.minus === true || text[0] !== '-')
}
