import { quoteValue } from '../base/index.js'
import { type Exact, exactOf } from './exact.js'
import { isFigure } from './isFigure.js'

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
