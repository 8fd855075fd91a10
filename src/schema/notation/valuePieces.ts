import { dropUndefined } from '../../base/index.js'
import { listSpellings, type Measure, UNITS_BY_MEASURE, type Unit } from '../../quantity/index.js'
import type { NotationPart } from '../../spec/index.js'
import * as shapes from '../shapes/textShapes.js'
import type { Found, Piece, WrittenSource } from './piece.js'
import {
  convert,
  field,
  kindWords,
  labelled,
  listOf,
  noteExpected,
  oneOf,
  optional,
  retry,
  sequence,
  term,
  words,
} from './piece.js'

// The pieces of all texts of a sheet: figures, amounts with their unit, and sources.

/** A pattern of the full form, to be part of a text. */
const makePart = ({ source }: RegExp): string => source.slice(1, -1)

export const FIGURE_PATTERN = /* @__PURE__ */ makePart(shapes.FIGURE_PATTERN)
/** Limits of intervals have at most six digits. */
export const INTERVAL_FIGURE_PATTERN = /* @__PURE__ */ makePart(shapes.INTERVAL_FIGURE_PATTERN)
export const DATE_PATTERN = /* @__PURE__ */ makePart(shapes.DATE_PATTERN)
export const ID = /* @__PURE__ */ makePart(shapes.ID_PATTERN)
/** The same figures without zero. */
export function makePositivePattern(wholeDigits: number): string {
  const decimals = [0, 1, 2, 3, 4, 5].map((zeros) => `${'0'.repeat(zeros)}[1-9][0-9]{0,${5 - zeros}}`)
  return `([1-9][0-9]{0,${wholeDigits - 1}}(\\.[0-9]{1,6})?|0\\.(${decimals.join('|')}))`
}

/** A character of a word. */
export const LETTER = '[^ ,;\\[\\]]'
const makeWordsPattern = (letter: string) => `${letter}+( ${letter}+)*`
/** Words up to a comma, a semicolon or a square bracket. */
export const WORDS_PATTERN = /* @__PURE__ */ makeWordsPattern(LETTER)
/** Words with commas and semicolons. */
export const FREE_WORDS_PATTERN = /* @__PURE__ */ makeWordsPattern('[^ \\[\\]]')

export const FRACTION_PATTERN = '([1-9][0-9]{0,2} )?(1/2|[1-3]/4|[1-7]/8|(1[0-5]|[1-9])/16)'
/** Between the figures of a range. */
export const RANGE_PATTERN = '(–|-| to )'

/** One of these units. The longest spelling is first, so that `g` does not match the start of `gram`. */
const unitPiece = (units: readonly Unit[]): Piece =>
  oneOf(
    ...units
      .flatMap((unit) => listSpellings(unit).map((spelling) => [spelling, unit] as const))
      .sort(([first], [second]) => second.length - first.length)
      .map(([spelling, unit]) => words(spelling, undefined, { unit })),
  )

/**
 * Figures with one of these units, as the group `unit`. Amounts of all units share the pattern of their figures: a
 * pattern with units takes 1 ms at its first use.
 */
export function measured(
  figures: string,
  units: readonly Unit[],
  expected: NotationPart,
  build: (found: Found) => unknown = (found) => found,
  end = '',
): Piece {
  const amountPiece = sequence(term(`${figures} `), unitPiece(units), term(end))
  return {
    ...amountPiece,
    read: (reading) => {
      const found = retry(amountPiece, reading) as Found | undefined
      return found ? build(found) : noteExpected(reading, expected)
    },
  }
}

/** `30`, `30 ± 2` or `20–25`. */
const makeBandPattern = (figure: string, between: string, moreTolerances = '') =>
  `(?<value>${figure})( ± (?<both>${FIGURE_PATTERN})${moreTolerances}|${between}(?<max>${figure}))?`
const makeBoundPattern = (figure: string) => `|(?<bound>min|max)\\. (?<limit>${figure}))`

/**
 * `450`, `7 1/2`, `30 ± 2`, `30 +2/-1`, `20–25` or `min. 20`, then a space and one of the units. Temperatures
 * may be negative, so their range has no hyphen: `-10 to 45 °C`.
 */
function amount(measure: Measure, units: readonly Unit[] = UNITS_BY_MEASURE[measure]): Piece {
  const signed = `-?${FIGURE_PATTERN}`
  const tolerances = `| \\+(?<plus>${FIGURE_PATTERN})/-(?<minus>${FIGURE_PATTERN})`
  const figures =
    measure === 'temperature'
      ? `(${makeBandPattern(signed, ' to ')}${makeBoundPattern(signed)}`
      : `((?<fraction>${FRACTION_PATTERN})|${makeBandPattern(FIGURE_PATTERN, RANGE_PATTERN, tolerances)}${makeBoundPattern(FIGURE_PATTERN)}`
  return measured(figures, units, measure, makeBand)
}

/** The sign of an angle may follow the figure directly: `90°`. */
export const angle = (): Piece =>
  term(`${makeBandPattern(FIGURE_PATTERN, RANGE_PATTERN)}(°| °| deg| degree)`, 'angle', (found: Found) =>
    makeBand({ ...found, unit: 'deg' }),
  )

function makeBand(found: Found): object {
  const { fraction, value, both, plus = both, minus = both, max, bound, limit, unit } = found
  if (bound) return { kind: 'limits', [bound]: limit, unit }
  if (max) return { kind: 'limits', min: value, max, unit }
  if (plus) return { kind: 'nominal with tolerance', value, minus, plus, unit }
  if (fraction) return { kind: 'nominal', value: fractionToDecimal(fraction), unit, asPrinted: fraction }
  return { kind: 'nominal', value, unit }
}

/** Converts `7 1/2` to `7.5`. */
export function fractionToDecimal(fraction: string): string {
  const [bottom, top, whole = '0'] = fraction.split(/[ /]/).reverse()
  return whole + String(Number(top) / Number(bottom)).slice(1)
}

/** A figure with the other printed figures in round brackets. */
export const printed = (piece: Piece, other = piece): Piece =>
  sequence(piece, optional(labelled(' (', 'printed', listOf(other, ', ')), ')'))
export const printedAmount = (measure: Measure, units?: readonly Unit[]): Piece =>
  printed(amount(measure, units))

export const NOT_STATED = 'not stated'
export const notStated = (): Piece => kindWords(NOT_STATED)
/** A printed amount or `not stated`. */
export const amountOrNotStated = (measure: Measure, units?: readonly Unit[]): Piece =>
  oneOf(notStated(), printedAmount(measure, units))

/** `p. 60`, `bulletin p. 2`, `bulletin`, and `, doubtful`, between these patterns. */
const writtenSource = (start = '', end = ''): Piece =>
  term(
    `${start}(((?<ref>${ID}) )?p\\. (?<page>${WORDS_PATTERN})|(?<whole>${ID}))(, (?<confidence>second hand|doubtful))?${end}`,
    'source',
    ({ ref, whole = ref, page, confidence = 'read' }: Found) =>
      dropUndefined({ ref: whole, page, confidence }),
  )
const sourceInBrackets = (): Piece => writtenSource(' \\[', '\\]')
const citeSource = (source: Piece): Piece =>
  convert(source, (written, { cite }) => cite(written as WrittenSource))

/** A source without its brackets. The id may come from the section or the sheet. */
export const source = (): Piece => citeSource(writtenSource())

/** A piece with a source only if its text has one. The id may come from the section or the sheet. */
export const withOwnSource = (piece: Piece): Piece =>
  sequence(piece, optional(field('source', citeSource(sourceInBrackets()))))

/**
 * A piece with its source after it. `listLeaves` returns the leaves that the source applies to, by default
 * the value itself. The source of a section applies to stated values, never to `not stated`.
 */
export function withSource(
  piece: Piece,
  listLeaves: (value: Readonly<Record<string, unknown>>) => readonly unknown[] = (value) => [value],
): Piece {
  const brackets = sourceInBrackets()
  return {
    pattern: [piece, optional(brackets)],
    read: (reading) => {
      const value = piece.read(reading) as Readonly<Record<string, unknown>> | undefined
      if (value === undefined) return undefined
      const from = reading.at + 2
      const written = retry(brackets, reading) as WrittenSource | undefined
      if (written) reading.marks.push({ path: `${reading.path}/source`, from, to: reading.at - 1 })
      for (const leaf of listLeaves(value) as readonly { kind?: unknown; source?: unknown }[])
        if (leaf && leaf.source === undefined && (written || leaf.kind !== NOT_STATED)) {
          const source = reading.cite(written)
          if (source) leaf.source = source
        }
      return value
    },
  }
}
