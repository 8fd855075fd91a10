import type { Figure } from './unit.js'

const MINUS = 45
const POINT = 46
const ZERO = 48

/**
 * Whether a text is a figure as documents keep it: `10.0` with its printed digits, no exponent, no group marks. For
 * what people write use {@link parseQuantity}.
 */
export function isFigure(text: unknown, options?: { readonly minus?: boolean }): text is Figure {
  if (typeof text !== 'string' || text.length > 17) return false
  // scanned by hand: it runs for every limit of every machine of a fleet, where a pattern takes several times as long
  const start = options?.minus === true && text.charCodeAt(0) === MINUS ? 1 : 0
  let point = text.length
  for (let at = start; at < text.length; at++) {
    const digit = text.charCodeAt(at) - ZERO
    if (digit >= 0 && digit <= 9) continue
    if (digit !== POINT - ZERO || point < text.length) return false
    point = at
  }
  const whole = point - start
  const decimals = text.length - point - 1
  if (whole < 1 || whole > 9 || decimals === 0 || decimals > 6) return false
  return whole === 1 || text.charCodeAt(start) !== ZERO
}
