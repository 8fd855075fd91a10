import { type Finding, quoteValue, type Result, requireKnownKeys } from '../base/index.js'
import type { QuantityCodes } from './codes.js'
import { exactOf, exactText, powerOfTen, times } from './exact.js'
import { decimalsOf } from './figureOf.js'
import { isFigure } from './isFigure.js'
import { isUnit } from './isUnit.js'
import type { PrintedBand } from './printed.js'
import { type NumberFound, type Reading, readNumber } from './readNumber.js'
import { type Parts, readBound, readParts } from './readParts.js'
import { intendedUnit } from './readUnit.js'
import { textFinding } from './textFinding.js'
import { type Measure, UNITS_BY_MEASURE, type Unit } from './unit.js'

/** What the caller knows about a text before it is read. */
export interface ReadingOptions {
  /** The measure that must come out; it also decides between names that two measures share. */
  readonly measure?: Measure
  /** The decimal mark of the text; without it `1.234` and `1,234` are refused. */
  readonly decimalMark?: '.' | ','
  /** Units that a bare `gal`, `qt`, `pt`, `fl oz`, `oz` or `lb` means. */
  readonly assume?: readonly Unit[]
}

const MAX_TEXT = 200

/** Raised digits behind a number, the mark of a footnote; above a fraction stroke they are a numerator. */
const RAISED = /(?<=[0-9½¼¾⅓⅔⅛⅜⅝⅞])[⁰¹²³⁴-⁹]+(?![⁰¹²³⁴-⁹]*[⁄∕/])/

/**
 * Reads what people write for a quantity: `8.9 ft-lb`, `7 1/2 lb-ft`, `½ qt (US)`, `106 in-lbs`, `34–44 N·m`,
 * `20 ± 2 N·m`, `≥ 20 N·m`. Nothing is guessed: what could mean two things is refused and both are named.
 *
 * @param text - at most 200 characters; ft-lb and lb-ft read alike; full-width forms and all kinds of spaces are met
 * @param options - measure, decimal mark and assumed units, each only where the caller knows it
 * @returns the printed value with its digits, or all findings: `quantity/number-…`, `quantity/unit-…`,
 *   `quantity/decimal-mark-is-unclear`, `quantity/value-is-negative`, `quantity/limits-are-reversed`; a warning for
 *   `kg-m` (mass for force) and for thirds
 * @throws TypeError when `text` is not a string or an option is none of its values
 *
 * Source: common practice, no source, for the spellings; house rule for refusals.
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
  if (text.length > MAX_TEXT)
    return refused(textFinding('quantity/text-is-too-long', { length: text.length, longest: MAX_TEXT }))
  if (RAISED.test(text)) {
    const without = text.replace(new RegExp(RAISED, 'g'), '')
    return refused(textFinding('quantity/number-has-a-raised-digit', { text, without }))
  }
  const plain = plainText(text).trim()
  if (plain === '') return refused(textFinding('quantity/text-is-empty', {}))
  const reading: Reading = { text: plain, at: 0, mark: options.decimalMark }
  const bound = readBound(reading)
  const first = readNumber(reading)
  if (first === undefined) return refused(textFinding('quantity/number-is-missing', { text: plain }))
  const findings: Finding<QuantityCodes>[] = []
  const parts = readParts(reading, first, bound)
  if (reading.at < plain.length) {
    findings.push(textFinding('quantity/text-is-left-over', { text: plain.slice(reading.at).trim() }))
  }
  const { name, written } = parts
  if (name === '') findings.push(textFinding('quantity/unit-is-missing', { text: plain }))
  const unit = name === '' ? undefined : intendedUnit(name, written, options, findings)
  // without a unit a minus is not reported
  const value = bandOf(parts, unit ?? 'degC', reading, findings)
  const good =
    value !== undefined && unit !== undefined && findings.every(({ severity }) => severity !== 'error')
  return good ? { ok: true, value, findings } : { ok: false, findings }
}

/** The band that the numbers make; undefined, with findings, where they make none. */
function bandOf(
  parts: Parts,
  unit: Unit,
  reading: Reading,
  findings: Finding<QuantityCodes>[],
): PrintedBand | undefined {
  const { kind, numbers } = parts
  const [only] = numbers
  if (kind === 'nominal' && only?.trouble === undefined && only?.negative === false) {
    const { value, fraction } = only
    return fraction === undefined ? { kind, value, unit } : { kind, value, unit, asPrinted: fraction }
  }
  const figures = numbers.map((found) => figureFound(found, reading, findings))
  const [value, second, third] = figures
  if (value === undefined || figures.includes(undefined)) return undefined
  const below = value.startsWith('-')
    ? value
    : kind === 'range' && second?.startsWith('-')
      ? second
      : undefined
  if (below !== undefined && !/^(deg[CF]|K_diff)/.test(unit)) {
    findings.push(textFinding('quantity/value-is-negative', { quantity: { value: below, unit } }))
  }
  const between = kind === 'range' ? ['–'] : kind === 'tolerance' ? [' ± '] : [' +', ' -']
  const asPrinted = numbers.some(({ fraction }) => fraction !== undefined) && {
    asPrinted: numbers
      .map(
        ({ fraction, value: digits }, place) =>
          (place === 0 ? '' : between[place - 1]) + (fraction ?? digits),
      )
      .join(''),
  }
  if (kind === 'nominal') return { kind, value, unit, ...asPrinted }
  if (kind === 'min' || kind === 'max') return { kind: 'limits', [kind]: value, unit, ...asPrinted }
  if (second === undefined) return undefined
  if (kind === 'range') {
    // fifteen digits and fewer keep their order as doubles
    if (Number(value) <= Number(second))
      return { kind: 'limits', min: value, max: second, unit, ...asPrinted }
    findings.push(textFinding('quantity/limits-are-reversed', { min: value, max: second }))
    return undefined
  }
  const plus = parts.percent ? shareOf(value, second) : second
  const minus =
    third === undefined
      ? plus
      : parts.percent
        ? shareOf(value, third.replace('-', ''))
        : third.replace('-', '')
  if (!isFigure(plus) || !isFigure(minus)) {
    findings.push(textFinding('quantity/number-is-unreadable', { text: reading.text }))
    return undefined
  }
  return { kind: 'nominal with tolerance', value, minus, plus, unit, ...asPrinted }
}

function figureFound(
  found: NumberFound,
  reading: Reading,
  findings: Finding<QuantityCodes>[],
): string | undefined {
  const { trouble, readings, negative } = found
  const { text } = reading
  let { value } = found
  if (trouble === 'no-figure') {
    findings.push(textFinding('quantity/number-is-unreadable', { text }))
    return undefined
  }
  if (trouble === 'does-not-end') {
    findings.push(textFinding('quantity/fraction-is-rounded', { text, value }, 'warning'))
  }
  if (readings) {
    const [withPoint, withComma] = readings
    if (reading.mark === undefined) {
      findings.push(textFinding('quantity/decimal-mark-is-unclear', { text, withPoint, withComma }))
      return undefined
    }
    // another number of the text shows which mark it is
    value = reading.mark === '.' ? withPoint : withComma
  }
  return negative && !/^[0.]+$/.test(value) ? `-${value}` : value
}

/** `percent` of a figure, with all its digits and no more. */
function shareOf(figure: string, percent: string): string {
  const decimals = decimalsOf(figure) + decimalsOf(percent) + 2
  const share = times(exactOf(figure.replace('-', '')), times(exactOf(percent), powerOfTen(-2)))
  return exactText(share, decimals, 'down').replace(/\.?0+$/, '')
}

function refused(finding: Finding<QuantityCodes>): Result<PrintedBand, QuantityCodes> {
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
    if (!isUnit(unit)) throw new TypeError(`options.assume must hold unit ids, got ${quoteValue(unit)}`)
  }
}

/**
 * Full-width forms, spaces of all kinds, raised digits, dots and marks as one plain character each; a vulgar fraction
 * as ` 1/2`. Text that is plain already comes back as it is.
 */
function plainText(text: string): string {
  let plain = ''
  let kept = 0
  for (let at = 0; at < text.length; at++) {
    const code = text.charCodeAt(at)
    // ASCII, degree, plus-minus, middle dot, en dash and the two bounds are plain already
    if ((code > 31 && code < 127) || code === 0xb0 || code === 0xb1 || code === 0xb7 || code === 0x2013)
      continue
    if (code === 0x2264 || code === 0x2265) continue
    plain += text.slice(kept, at) + plainSign(text.charAt(at))
    kept = at + 1
  }
  return kept === 0 ? text : plain + text.slice(kept)
}

const SAME: readonly (readonly [string, string])[] = [
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
const WRITTEN: { readonly [sign: string]: string } = {
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

function plainSign(sign: string): string {
  const code = sign.charCodeAt(0)
  if (code >= 0xff01 && code <= 0xff5e) return String.fromCharCode(code - 0xfee0)
  if (Object.hasOwn(WRITTEN, sign)) return WRITTEN[sign] ?? ''
  return SAME.find(([signs]) => signs.includes(sign))?.[1] ?? sign
}
