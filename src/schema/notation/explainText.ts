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
export function explainText(
  notation: Notation,
  text: string,
  stop: StopPoint,
  path: JsonPointer,
  reportMistake: ReportMistake,
): Finding<SpecCodes> {
  const { from, to, isInWord } = findSegment(text, stop.at)
  const found = text.slice(from, to)
  const unit = isInWord || THOUSANDS_PATTERN.test(text) ? undefined : findUnit(found, stop.expected)
  const probableTexts = THOUSANDS_PATTERN.test(text)
    ? [text.replace(THOUSANDS_PATTERN, '$1$2'), text.replace(THOUSANDS_PATTERN, '$1.$2')]
    : [
        text,
        ...(unit?.symbols ?? []).map(
          (symbol) => `${text.slice(0, from)}${unit?.figures} ${symbol}${text.slice(to)}`,
        ),
      ]
  const fixes = [...new Set(probableTexts.map((candidate) => correctText(notation, candidate)))]
    .filter((value) => value !== undefined && value !== text)
    .map((value): Fix => ({ op: 'replace', path, value }))
  const finding = reportMistake(path, 'spec/bad-notation', {
    text: text.slice(0, MAX_NOTATION_LENGTH),
    range: [from, to],
    found,
    expected: isInWord ? [] : [...new Set(stop.expected)],
    reason: THOUSANDS_PATTERN.test(text) ? 'quantity/decimal-mark-is-unclear' : unit?.reason,
  })
  return fixes.length === 0 ? finding : { ...finding, cures: fixes }
}

/** `2,000` is two thousand, or two with three decimals. */
const THOUSANDS_PATTERN = /(\b[1-9]\d{0,2}),(\d{3})(?![\d,])/

/**
 * The part of the text around an index, up to the next punctuation mark. `isInWord`: a word was read in part.
 */
function findSegment(text: string, at: number) {
  const isInWord = /[a-z]$/i.test(text.slice(0, at)) && /^[a-z]/i.test(text.slice(at))
  const [before = ''] = isInWord ? (/[^,;()[\]]*$/.exec(text.slice(0, at)) ?? []) : []
  const [marks = ''] = /^[ ,;([]*/.exec(text.slice(at - before.length)) ?? []
  const from = at - before.length + marks.length
  const [found = ''] = /^(?:(?! (?:with|by|of|on) )[^,;()[\]]|,(?=\d))*/.exec(text.slice(from)) ?? []
  return { from, to: from + found.trimEnd().length, isInWord }
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
  let bestText = text
  for (;;) {
    const reading = readNotation(notation, bestText)
    if (reading.ok) return bestText
    const unreadLength = bestText.length - reading.at
    const betterText = listCorrections(bestText, reading, notation).find((candidate) => {
      if (candidate === bestText) return false
      const nextReading = readNotation(notation, candidate)
      return nextReading.ok || candidate.length - nextReading.at < unreadLength
    })
    if (betterText === undefined) return undefined
    bestText = betterText
  }
}

/**
 * A word that was read in part, such as `litre` of `litres`, may be of any measure, because the correction is
 * read again.
 */
const ALL_MEASURES = /* @__PURE__ */ Object.keys(UNITS_BY_MEASURE) as (keyof typeof UNITS_BY_MEASURE)[]

/** The text with each common slip corrected in turn. */
function listCorrections(text: string, { at, expected }: StopPoint, { slips }: Notation): readonly string[] {
  const { from, to, isInWord } = findSegment(text, at)
  const unit = findUnit(text.slice(from, to), isInWord ? ALL_MEASURES : expected)
  const isSure = unit?.symbols.length === 1 && unit.reason === undefined
  return [
    ...[...COMMON_SLIPS, ...slips].map(([slip, right]) => text.replace(slip, right)),
    ...(isSure ? [`${text.slice(0, from)}${unit.figures} ${unit.symbols[0]}${text.slice(to)}`] : []),
    `${text.slice(0, at)},${text.slice(at)}`,
  ]
}
