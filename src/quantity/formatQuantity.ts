import { requireObject } from '../base/index.js'
import { formatNumber, type NumberDigits, type NumberMarks } from './formatNumber.js'
import type { PrintedBand, PrintedQuantity, Quantity, Unit } from './unit.js'
import { unitSymbol } from './unitSymbol.js'

/**
 * Formats a quantity as on a card: digits with the language's marks, a no-break space, the symbol. For
 * speech, use `speech.quantity` of the catalogue.
 *
 * @param quantity - a number with its unit, a printed figure, or a printed band (`20 ± 2`, `34–44`, `≥ 34`)
 * @param marks - decimal and group marks of the language
 * @param digits - decimals for a number; printed figures keep theirs
 * @returns text without line breaks; {@link parseQuantity} reads it back
 * @throws TypeError if it is not a quantity or the unit is unknown, RangeError for NaN and infinities
 *
 * Source: SI practice (space before the symbol, none before ° of angle), from memory. House rule for bands.
 *
 * @example
 * ```ts
 * import { formatQuantity } from 'drivetrain-service/v1/quantity'
 * // How is a torque of 20.0 N·m printed in Swedish?
 * formatQuantity({ value: '20.0', unit: 'N.m' }, { decimal: ',', group: ' ' }) // => '20,0\u00a0N·m'
 * ```
 */
export function formatQuantity(
  quantity: Quantity | PrintedQuantity | PrintedBand,
  marks: NumberMarks,
  digits: NumberDigits = {},
): string {
  requireObject('quantity', quantity)
  const symbol = unitSymbol(quantity.unit)
  return formatBand(quantity, marks, digits) + (quantity.unit === 'deg' ? '' : '\u00a0') + symbol
}

function formatBand(
  quantity: Quantity | PrintedQuantity | PrintedBand,
  marks: NumberMarks,
  digits: NumberDigits,
): string {
  const format = (value: number | string): string => formatNumber(value, marks, digits)
  if ('kind' in quantity && quantity.kind === 'limits') return formatLimits(quantity, format)
  if (!('kind' in quantity) || quantity.kind === 'nominal') return format(quantity.value)
  const { value, minus, plus } = quantity
  if (minus === plus) return `${format(value)}\u00a0±\u00a0${format(plus)}`
  return `${format(value)}\u00a0+${format(plus)}/−${format(minus)}`
}

type Limits = Extract<PrintedBand<Unit>, { kind: 'limits' }>

function formatLimits({ min, max }: Limits, format: (value: string) => string): string {
  if (min !== undefined && max !== undefined) {
    const dash = min.startsWith('-') || max.startsWith('-') ? '\u00a0–\u00a0' : '–'
    return format(min) + dash + format(max)
  }
  if (min !== undefined) return `≥\u00a0${format(min)}`
  if (max !== undefined) return `≤\u00a0${format(max)}`
  throw new TypeError('quantity of kind limits must have min or max')
}
