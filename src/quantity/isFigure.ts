import type { Figure } from './unit.js'

const FIGURE = /^-?(0|[1-9]\d{0,8})(\.\d{1,6})?$/

/**
 * Whether a text is a figure as stored in documents, such as `10.0`: printed digits, no exponent, no group
 * marks. To read other spellings, use {@link parseQuantity}.
 */
export function isFigure(text: unknown, options?: { readonly minus?: boolean }): text is Figure {
  return typeof text === 'string' && FIGURE.test(text) && (options?.minus === true || text[0] !== '-')
}
