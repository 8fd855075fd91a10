import { quoteValue, requireKnownKeys, requireObject } from '../base/index.js'
import { exactOf, formatDecimal, formatExact } from './exact.js'
import { requireFigure } from './figure.js'
import type { Figure } from './unit.js'

/** The number marks of a language, from its catalogue. */
export interface NumberMarks {
  readonly decimal: string
  /** Between groups of three whole digits; `''` for none. */
  readonly group: string
  /** Minimum number of whole digits for groups. Default 5, as in SI: `5000` and `10 000`. */
  readonly groupFrom?: number
}

/** The decimals of a computed number. A printed figure always keeps its digits. */
export interface NumberDigits {
  /** Exact number of decimals, 0 to 20. */
  readonly decimals?: number
  /** Maximum number of decimals, 0 to 20, without trailing zeros. */
  readonly atMost?: number
}

/**
 * Formats a number or a printed figure with the marks of a language, for texts without a unit. With a unit,
 * use {@link formatQuantity}.
 *
 * Source: rounding by ASTM E29 (even digit on a tie).
 */
export function formatNumber(value: number | Figure, marks: NumberMarks, digits: NumberDigits = {}): string {
  requireObject('marks', marks)
  for (const key of ['decimal', 'group'] as const)
    if (typeof marks[key] !== 'string')
      throw new TypeError(`marks.${key} must be a string, got ${quoteValue(marks[key])}`)
  requireKnownKeys('digits', digits, ['decimals', 'atMost'])
  if (typeof value === 'string') requireFigure(value, 'value')
  const text = typeof value === 'string' ? value : formatDigits(value, digits)
  const isNegative = text.startsWith('-')
  const [whole = '', decimals] = (isNegative ? text.slice(1) : text).split('.')
  const groupedDigits =
    whole.length < (marks.groupFrom ?? 5) ? whole : whole.replace(/\B(?=(?:\d{3})+$)/g, () => marks.group)
  return (isNegative ? '−' : '') + groupedDigits + (decimals === undefined ? '' : marks.decimal + decimals)
}

function formatDigits(value: number, { decimals, atMost }: NumberDigits): string {
  if (typeof value !== 'number')
    throw new TypeError(`value must be a number or a figure, got ${quoteValue(value)}`)
  if (!Number.isFinite(value)) throw new RangeError(`value must be finite, got ${value}`)
  const places = decimals ?? atMost
  if (places === undefined) return writePlainDigits(value)
  if (!Number.isInteger(places) || places < 0 || places > 20)
    throw new RangeError(`decimals must be a whole number from 0 to 20, got ${quoteValue(places)}`)
  const text = formatExact(exactOf(value), places)
  return decimals === undefined && places > 0 ? text.replace(/\.?0+$/, '') : text
}

/** The shortest digits of a double, without an exponent. */
function writePlainDigits(value: number): string {
  const [digits = '', exponent] = String(value).split('e')
  if (exponent === undefined) return digits
  const [whole = '', decimals = ''] = digits.split('.')
  return formatDecimal(
    BigInt(whole + decimals) * 10n ** BigInt(Math.max(0, Number(exponent) - decimals.length)),
    Math.max(0, decimals.length - Number(exponent)),
  )
}
