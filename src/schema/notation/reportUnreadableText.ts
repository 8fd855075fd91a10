import type { Finding, Fix, JsonPointer } from '../../base/index.js'
import { UNITS_BY_MEASURE } from '../../quantity/index.js'
import type { NotationPart, SpecCodes } from '../../spec/index.js'
import type { ReportMistake } from '../reportMistake.js'
import { findUnit } from './findUnit.js'
import { type CommonSlip, MAX_NOTATION_LENGTH, type Notation } from './notation.js'
import { readNotation } from './readNotation.js'

/** The index where reading stopped, and what was expected there. */
export interface StopPoint {
  readonly at: number
  readonly expected: readonly NotationPart[]
}

/** Reports where a text in short notation cannot be read, what was expected there, and the probable texts. */
export function reportUnreadableText(
  notation: Notation,
  text: string,
  stop: StopPoint,
  path: JsonPointer,
  reportMistake: ReportMistake,
): Finding<SpecCodes> {
  const { from, to, found, isInWord, texts, reason } = findSegment(text, stop, [])
  const isThousands = THOUSANDS_PATTERN.test(text)
  const probableTexts = isThousands
    ? [text.replace(THOUSANDS_PATTERN, '$1$2'), text.replace(THOUSANDS_PATTERN, '$1.$2')]
    : [text, ...texts]
  const fixes = [...new Set(probableTexts.map((item) => correctText(notation, item)))]
    .filter((value) => value !== undefined && value !== text)
    .map((value): Fix => ({ op: 'replace', path, value }))
  const finding = reportMistake(path, 'spec/bad-notation', {
    text: text.slice(0, MAX_NOTATION_LENGTH),
    range: [from, to],
    found,
    expected: isInWord ? [] : [...new Set(stop.expected)],
    reason: isThousands ? 'quantity/decimal-mark-is-unclear' : reason,
  })
  return fixes.length === 0 ? finding : { ...finding, cures: fixes }
}

/** `2,000` is two thousand, or two with three decimals. */
const THOUSANDS_PATTERN = /(\b[1-9]\d{0,2}),(\d{3})(?![\d,])/

/**
 * The part of the text around an index, up to the next punctuation mark, and the texts with a probable amount in its
 * place. `isInWord`: a word was read in part, and may be of these measures.
 */
function findSegment(text: string, { at, expected }: StopPoint, inWord: StopPoint['expected']) {
  const isInWord = /^[a-z]{2}/i.test(text.slice(at - 1))
  const start = isInWord ? text.slice(0, at).search(/[^,;()[\]]*$/) : at
  const from = start + text.slice(start).search(/[^ ,;([]|$/)
  const length = text.slice(from).search(/ (with|by|of|on) |[;()[\]]|,(?!\d)|$/)
  const found = text.slice(from, from + length).trimEnd()
  const to = from + found.length
  const { amounts, reason } = findUnit(found, isInWord ? inWord : expected)
  const texts = amounts.map((amount) => text.slice(0, from) + amount + text.slice(to))
  return { from, to, found, isInWord, texts, reason }
}

/**
 * Common spellings, with those of the notation. Each is tried alone, and kept if more of the text can then be
 * read.
 */
const COMMON_SLIPS: readonly CommonSlip[] = [
  [/[\u00a0\u2002-\u200a\u202f\t]/g, ' '],
  [/ {2,}|^ +| +$/g, ''],
  [/(\d)½/g, '$1 1/2'],
  [/(\d)¼/g, '$1 1/4'],
  [/(\d)¾/g, '$1 3/4'],
  [/½/g, '1/2'],
  [/¼/g, '1/4'],
  [/¾/g, '3/4'],
  [/(\d)-(\d+\/\d)/g, '$1 $2'],
  [/[−‐‑]/g, '-'],
  [/×/g, 'x'],
  [/(\d),(\d)/g, '$1.$2'],
  [/(\d) (\d{3})(?!\d)/g, '$1$2'],
  [/(\d) *(?:-|–|—|\.{2,3}) *(?=\d)/g, '$1–'],
  [/,(?=[^ \d])|(?<=[a-z°]),(?=\d)/g, ', '],
  [/(\d) ?x ?(?=\d)/g, '$1 x '],
  [/\bAPI /g, ''],
  [/\b(\d+W)(\d)/, '$1-$2'],
  [/\bGL ?(\d)/, 'GL-$1'],
  [/^(VG )/, 'ISO $1'],
  [/^(?:approx\.?|about|ca\.?|~) ?(?=\d)/, ''],
]

/** A readable text with few changes; undefined if none is found. */
function correctText(notation: Notation, text: string): string | undefined {
  const reading = readNotation(notation, text)
  if (reading.ok) return text
  const better = listCorrections(text, reading, notation).find((candidate) => {
    const nextReading = readNotation(notation, candidate)
    return nextReading.ok || candidate.length - nextReading.at < text.length - reading.at
  })
  return better === undefined ? better : correctText(notation, better)
}

/**
 * A word that was read in part, such as `litre` of `litres`, may be of any measure, because the correction is
 * read again.
 */
const ALL_MEASURES = /* @__PURE__ */ Object.keys(UNITS_BY_MEASURE) as (keyof typeof UNITS_BY_MEASURE)[]

/** The text with each common slip corrected in turn. */
function listCorrections(text: string, stop: StopPoint, { slips }: Notation): readonly string[] {
  const { texts, reason } = findSegment(text, stop, ALL_MEASURES)
  return [
    ...[...COMMON_SLIPS, ...slips].map(([slip, right]) => text.replace(slip, right)),
    ...(texts.length === 1 && reason === undefined ? texts : []),
    `${text.slice(0, stop.at)},${text.slice(stop.at)}`,
  ]
}
