import type { Figure } from './unit.js'

const FIGURE = /^-?(0|[1-9][0-9]{0,8})(\.[0-9]{1,6})?$/

/**
 * Whether a text is a figure as documents keep it: `10.0` with its printed digits, no exponent, no group marks. For
 * what people write use {@link parseQuantity}.
 *
 * @param text - any value
 * @param options - `minus: true` allows a minus, as temperatures carry it (default: not allowed)
 * @returns true for `^(0|[1-9][0-9]{0,8})(\.[0-9]{1,6})?$` of at most 15 significant digits
 *
 * Source: house rule; 15 digits are what a double always gives back.
 *
 * @example
 * ```ts
 * import { isFigure } from 'drivetrain-service/v1/quantity'
 * // Is a comma a decimal mark in a document?
 * isFigure('10,5') // => false
 * ```
 */
export function isFigure(text: unknown, options?: { readonly minus?: boolean }): text is Figure {
  if (typeof text !== 'string' || text.length > 17 || !FIGURE.test(text)) return false
  if (text.startsWith('-') && options?.minus !== true) return false
  // at most 9 whole digits and 6 decimals: never more than 15 significant ones
  return true
}
