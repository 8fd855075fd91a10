// Helpers for texts that are the same in every language.
import type { Say } from './catalogue.js'

/** `one, two and three`, with the language's word before the last item. */
export const join = (items: readonly string[], word: string): string =>
  items.length < 2 ? items.join('') : `${items.slice(0, -1).join(', ')} ${word} ${items.at(-1)}`

export const capitalize = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1)

/** `N·m`, without a number. */
export const writeUnitName = (unit: string, say: Say): string =>
  say.quantity({ value: '1', unit }).replace(/^1\s*/, '')

/** A figure without a unit, with its printed digits and the language's marks: `1.50`. */
export const writeFigure = (figure: string, say: Say): string =>
  say.quantity({ value: figure, unit: 'mm' }).replace(/\s*mm$/, '')

/** The language's word for a document value; a value that the table lacks is shown as it is typed. */
export const nameOf = (names: Readonly<Record<string, string>>, value: string): string =>
  Object.hasOwn(names, value) ? (names[value] ?? value) : value

/** The whole hours, minutes and seconds of a time, without those that are zero; `0 s` for none. */
export function splitDuration(
  seconds: number,
): readonly { readonly count: number; readonly unit: 'h' | 'min' | 's' }[] {
  const parts = [
    { count: Math.floor(seconds / 3600), unit: 'h' },
    { count: Math.floor((seconds % 3600) / 60), unit: 'min' },
    { count: seconds % 60, unit: 's' },
  ] as const
  const shown = parts.filter(({ count }) => count > 0)
  return shown.length === 0 ? parts.slice(2) : shown
}

/** `1 h 2 min`: the symbols are the same in every language. */
export const writeDuration = (seconds: number): string =>
  splitDuration(seconds)
    .map(({ count, unit }) => `${count}\u00a0${unit}`)
    .join(' ')

/** The clock time of a pour: `4:05`. */
export const writeClock = (seconds: number): string =>
  `${Math.floor(seconds / 60)}:${String(seconds % 60).padStart(2, '0')}`

/** The pieces of a decimal numeral such as `-8.90`, without the zeros at its end; undefined for another text. */
export function splitNumeral(
  digits: string,
): { readonly isNegative: boolean; readonly before: string; readonly after: string } | undefined {
  const match = /^([-−]?)([0-9]+)(?:\.([0-9]*?)0*)?$/.exec(digits)
  if (match === null) return undefined
  const [, minus, before = '', after = ''] = match
  return { isNegative: minus !== '', before, after }
}

const FRACTION_SIGNS: Readonly<Record<string, string>> = {
  '½': '1/2',
  '⅓': '1/3',
  '⅔': '2/3',
  '¼': '1/4',
  '¾': '3/4',
  '⅛': '1/8',
  '⅜': '3/8',
  '⅝': '5/8',
  '⅞': '7/8',
}

/** The pieces of a printed fraction such as `7 1/2` or `7½`; undefined for another text. */
export function splitFraction(
  asPrinted: string,
): { readonly whole?: string; readonly numerator: string; readonly denominator: string } | undefined {
  const text = asPrinted.replace(/[½⅓⅔¼¾⅛⅜⅝⅞]/u, (sign) => ` ${FRACTION_SIGNS[sign]}`).trim()
  const match = /^(?:([0-9]{1,6})[ -]+)?([0-9]{1,2})\/([0-9]{1,2})(?![0-9/])/.exec(text)
  const [, whole, numerator = '', denominator = ''] = match ?? []
  if (Number(numerator) < 1 || Number(numerator) >= Number(denominator)) return undefined
  return { ...(whole !== undefined && { whole }), numerator, denominator }
}
