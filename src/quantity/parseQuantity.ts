import { type Finding, quoteValue, type Result, requireKnownKeys } from '../base/index.js'
import type { QuantityCodes } from './codes.js'
import { exactOf, formatExact, multiply, powerOfTen } from './exact.js'
import { countDecimals, isFigure } from './figure.js'
import { isUnit } from './measureOf.js'
import { type FoundNumber, readNumber, type TextCursor } from './readNumber.js'
import { type QuantityParts, readBound, readParts } from './readParts.js'
import { findIntendedUnit, makeTextFinding } from './readUnit.js'
import { type Measure, type PrintedBand, UNITS_BY_MEASURE, type Unit } from './unit.js'

/** Facts that the caller knows about a text. */
export interface ReadingOptions {
  /** The expected measure. It also decides between two meanings of a unit name. */
  readonly measure?: Measure
  /** The decimal mark of the text; without it `1.234` and `1,234` are refused. */
  readonly decimalMark?: '.' | ','
  /** The units that `gal`, `qt`, `pt`, `fl oz`, `oz` or `lb` mean without further words. */
  readonly assume?: readonly Unit[]
}

const MAX_LENGTH = 200

/**
 * Superscript digits after a number, such as a footnote mark; before a fraction slash they are a numerator.
 */
const SUPERSCRIPT = /(?<=[0-9½¼¾⅓⅔⅛⅜⅝⅞])[⁰¹²³⁴-⁹]+(?![⁰¹²³⁴-⁹]*[⁄∕/])/

/**
 * Reads a quantity as people write it: `8.9 ft-lb`, `7 1/2 lb-ft`, `½ qt (US)`, `106 in-lbs`, `34–44 N·m`,
 * `20 ± 2 N·m`, `≥ 20 N·m`. It never guesses: a text with two meanings is refused, and the finding states
 * both.
 *
 * @param text - at most 200 characters; ft-lb and lb-ft mean the same; full-width forms and all kinds of spaces are read
 * @param options - measure, decimal mark and assumed units, each only if the caller knows it
 * @returns the printed value with its digits, or all findings: `quantity/number-…`, `quantity/unit-…`,
 *   `quantity/decimal-mark-is-unclear`, `quantity/value-is-negative`, `quantity/limits-reversed`; a warning for
 *   `kg-m` (mass for force) and for thirds
 * @throws TypeError if `text` is not a string or an option has an unknown value
 *
 * Source: common practice, no source, for the spellings. House rule for refusals.
 *
 * @example
 * ```ts
 * import { parseQuantity } from 'drivetrain-service/v1/quantity'
 * // Which unit does a handbook mean by `8.9 ft-lb`?
 * const read = parseQuantity('8.9 ft-lb')
 * read.ok && read.value // => { kind: 'nominal', value: '8.9', unit: 'lbf.ft' }
 * ```
 */
export function parseQuantity(
  text: string,
  options: ReadingOptions = {},
): Result<PrintedBand, QuantityCodes> {
  requireArguments(text, options)
  if (text.length > MAX_LENGTH)
    return refuseText(
      makeTextFinding('quantity/text-is-too-long', { length: text.length, longest: MAX_LENGTH }),
    )
  if (SUPERSCRIPT.test(text)) {
    const without = text.replace(new RegExp(SUPERSCRIPT, 'g'), '')
    return refuseText(makeTextFinding('quantity/superscript-digit', { text, without }))
  }
  const plainText = toPlainText(text).trim()
  if (plainText === '') return refuseText(makeTextFinding('quantity/text-is-empty', {}))
  const reading: TextCursor = { text: plainText, at: 0, mark: options.decimalMark }
  const bound = readBound(reading)
  const first = readNumber(reading)
  if (first === undefined)
    return refuseText(makeTextFinding('quantity/number-is-missing', { text: plainText }))
  const findings: Finding<QuantityCodes>[] = []
  const parts = readParts(reading, first, bound)
  if (reading.at < plainText.length) {
    findings.push(
      makeTextFinding('quantity/text-after-quantity', { text: plainText.slice(reading.at).trim() }),
    )
  }
  const { name, written } = parts
  if (name === '') findings.push(makeTextFinding('quantity/unit-is-missing', { text: plainText }))
  const unit = name === '' ? undefined : findIntendedUnit(name, written, options, findings)
  // without a unit a minus is not reported
  const value = makeBand(parts, unit ?? 'degC', reading, findings)
  const isComplete =
    value !== undefined && unit !== undefined && findings.every(({ severity }) => severity !== 'error')
  return isComplete ? { ok: true, value, findings } : { ok: false, findings }
}

/** Makes a printed value from the numbers; undefined, with findings, if they do not form one. */
function makeBand(
  parts: QuantityParts,
  unit: Unit,
  reading: TextCursor,
  findings: Finding<QuantityCodes>[],
): PrintedBand | undefined {
  const { kind, numbers } = parts
  const [single] = numbers
  if (kind === 'nominal' && single?.problem === undefined && single?.isNegative === false) {
    const { value, fraction } = single
    return fraction === undefined ? { kind, value, unit } : { kind, value, unit, asPrinted: fraction }
  }
  const figures = numbers.map((found) => makeFigure(found, reading, findings))
  const [value, second, third] = figures
  if (value === undefined || figures.includes(undefined)) return undefined
  const negativeFigure = value.startsWith('-')
    ? value
    : kind === 'range' && second?.startsWith('-')
      ? second
      : undefined
  if (negativeFigure !== undefined && !/^(deg[CF]|K_diff)/.test(unit)) {
    findings.push(
      makeTextFinding('quantity/value-is-negative', { quantity: { value: negativeFigure, unit } }),
    )
  }
  const separators = kind === 'range' ? ['–'] : kind === 'tolerance' ? [' ± '] : [' +', ' -']
  const asPrinted = numbers.some(({ fraction }) => fraction !== undefined) && {
    asPrinted: numbers
      .map(
        ({ fraction, value: digits }, place) =>
          (place === 0 ? '' : separators[place - 1]) + (fraction ?? digits),
      )
      .join(''),
  }
  if (kind === 'nominal') return { kind, value, unit, ...asPrinted }
  if (kind === 'min' || kind === 'max') return { kind: 'limits', [kind]: value, unit, ...asPrinted }
  if (second === undefined) return undefined
  if (kind === 'range') {
    // figures of at most fifteen digits keep their order as doubles
    if (Number(value) <= Number(second))
      return { kind: 'limits', min: value, max: second, unit, ...asPrinted }
    findings.push(makeTextFinding('quantity/limits-reversed', { min: value, max: second }))
    return undefined
  }
  const plus = parts.isPercent ? calculatePercent(value, second) : second
  const minus =
    third === undefined
      ? plus
      : parts.isPercent
        ? calculatePercent(value, third.replace('-', ''))
        : third.replace('-', '')
  if (!isFigure(plus) || !isFigure(minus)) {
    findings.push(makeTextFinding('quantity/number-is-unreadable', { text: reading.text }))
    return undefined
  }
  return { kind: 'nominal with tolerance', value, minus, plus, unit, ...asPrinted }
}

function makeFigure(
  found: FoundNumber,
  reading: TextCursor,
  findings: Finding<QuantityCodes>[],
): string | undefined {
  const { problem, readings, isNegative } = found
  const { text } = reading
  let { value } = found
  if (problem === 'no-figure') {
    findings.push(makeTextFinding('quantity/number-is-unreadable', { text }))
    return undefined
  }
  if (problem === 'does-not-end') {
    findings.push(makeTextFinding('quantity/fraction-is-rounded', { text, value }, 'warning'))
  }
  if (readings) {
    const [withPoint, withComma] = readings
    if (reading.mark === undefined) {
      findings.push(makeTextFinding('quantity/decimal-mark-is-unclear', { text, withPoint, withComma }))
      return undefined
    }
    // another number in the text shows the decimal mark
    value = reading.mark === '.' ? withPoint : withComma
  }
  return isNegative && !/^[0.]+$/.test(value) ? `-${value}` : value
}

/** `percent` of a figure, exactly. */
function calculatePercent(figure: string, percent: string): string {
  const decimals = countDecimals(figure) + countDecimals(percent) + 2
  const share = multiply(exactOf(figure.replace('-', '')), multiply(exactOf(percent), powerOfTen(-2)))
  return formatExact(share, decimals, 'down').replace(/\.?0+$/, '')
}

function refuseText(finding: Finding<QuantityCodes>): Result<PrintedBand, QuantityCodes> {
  return { ok: false, findings: [finding] }
}

function requireArguments(text: unknown, options: ReadingOptions): void {
  if (typeof text !== 'string') throw new TypeError(`text must be a string, got ${quoteValue(text)}`)
  requireKnownKeys('options', options, ['measure', 'decimalMark', 'assume'])
  const { measure, decimalMark, assume } = options
  if (measure !== undefined && !Object.hasOwn(UNITS_BY_MEASURE, measure)) {
    throw new TypeError(`options.measure must be a measure such as 'torque', got ${quoteValue(measure)}`)
  }
  if (decimalMark !== undefined && decimalMark !== '.' && decimalMark !== ',') {
    throw new TypeError(`options.decimalMark must be '.' or ',', got ${quoteValue(decimalMark)}`)
  }
  if (assume !== undefined && !Array.isArray(assume)) {
    throw new TypeError(`options.assume must be a list of unit ids, got ${quoteValue(assume)}`)
  }
  for (const unit of assume ?? []) {
    if (!isUnit(unit))
      throw new TypeError(`options.assume must contain only unit ids, got ${quoteValue(unit)}`)
  }
}

/**
 * Replaces full-width forms and special spaces, dots and marks with plain characters, and `½` with ` 1/2`.
 */
function toPlainText(text: string): string {
  let plainText = ''
  let copiedEnd = 0
  for (let at = 0; at < text.length; at++) {
    const code = text.charCodeAt(at)
    // ASCII, degree, plus-minus, middle dot, en dash, ≤ and ≥ are already plain
    if ((code > 31 && code < 127) || code === 0xb0 || code === 0xb1 || code === 0xb7 || code === 0x2013)
      continue
    if (code === 0x2264 || code === 0x2265) continue
    plainText += text.slice(copiedEnd, at) + toPlainSign(text.charAt(at))
    copiedEnd = at + 1
  }
  return copiedEnd === 0 ? text : plainText + text.slice(copiedEnd)
}

const PLAIN_SIGNS: readonly (readonly [string, string])[] = [
  ['\t\n\r\u00a0\u2002\u2003\u2004\u2005\u2006\u2007\u2008\u2009\u200a\u202f\u205f\u3000', ' '],
  ['•∙⋅・', '·'],
  ['−‐‑', '-'],
  ['—―', '–'],
  ['º˚', '°'],
  ['′’‘ʹ', "'"],
  ['″”“', '"'],
  ['⁄∕', '/'],
  ['²', '2'],
  ['³', '3'],
  ['\u200b\u2060\ufeff', ''],
]
const SIGN_TEXTS: { readonly [sign: string]: string } = {
  '½': ' 1/2',
  '¼': ' 1/4',
  '¾': ' 3/4',
  '⅓': ' 1/3',
  '⅔': ' 2/3',
  '⅛': ' 1/8',
  '⅜': ' 3/8',
  '⅝': ' 5/8',
  '⅞': ' 7/8',
  '℃': '°C',
  '℉': '°F',
  '㏄': 'cc',
  '…': '–',
}

function toPlainSign(sign: string): string {
  const code = sign.charCodeAt(0)
  if (code >= 0xff01 && code <= 0xff5e) return String.fromCharCode(code - 0xfee0)
  if (Object.hasOwn(SIGN_TEXTS, sign)) return SIGN_TEXTS[sign] ?? ''
  return PLAIN_SIGNS.find(([signs]) => signs.includes(sign))?.[1] ?? sign
}
