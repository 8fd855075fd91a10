import { dropUndefined } from '../../base/index.js'
import { listSpellings, type Measure, type Unit } from '../../quantity/index.js'
import type { NotationPart } from '../../spec/index.js'
import type { Piece, Reading, WrittenSource } from './piece.js'
import { escapePattern, field, listOf, oneOf, optional, retry, sequence, term, words } from './piece.js'

// The pieces of all texts of a sheet: figures, amounts with their unit, and sources.

export const FIGURE_PATTERN = '(?:0|[1-9][0-9]{0,8})(?:\\.[0-9]{1,6})?'
/** Limits of intervals have at most six digits. */
export const INTERVAL_FIGURE_PATTERN = '(?:0|[1-9][0-9]{0,5})(?:\\.[0-9]{1,6})?'
/** The same figures without zero. */
export function makePositivePattern(wholeDigits: number): string {
  const decimals = [0, 1, 2, 3, 4, 5].map((zeros) => `${'0'.repeat(zeros)}[1-9][0-9]{0,${5 - zeros}}`)
  return `(?:[1-9][0-9]{0,${wholeDigits - 1}}(?:\\.[0-9]{1,6})?|0\\.(?:${decimals.join('|')}))`
}
export const ID = '[a-z][a-z0-9-]{0,63}'
/** Words up to a comma, a semicolon or a square bracket. */
export const WORDS_PATTERN = '[^ ,;\\[\\]]+(?: [^ ,;\\[\\]]+)*'
/** Words with commas and semicolons. */
export const FREE_WORDS_PATTERN = '[^ \\[\\]]+(?: [^ \\[\\]]+)*'

export const FRACTION_PATTERN = '(?:[1-9][0-9]{0,2} )?(?:1/2|[1-3]/4|[1-7]/8|(?:1[0-5]|[1-9])/16)'

/**
 * A pattern group for these units, and a function from spelling to unit. The longest spelling is first, so
 * that `g` does not match the start of `gram`.
 */
export function unitGroup(units: readonly Unit[]) {
  const unitBySpelling = new Map(
    units.flatMap((unit) => listSpellings(unit).map((spelling) => [spelling, unit] as const)),
  )
  const longestFirst = [...unitBySpelling.keys()].toSorted((first, second) => second.length - first.length)
  return {
    pattern: `(?<unit>${longestFirst.map(escapePattern).join('|')})`,
    read: (spelling = '') => unitBySpelling.get(spelling),
  }
}

/** `450`, `7 1/2`, `30 ± 2`, `30 +2/-1`, `20–25` or `min. 20`, then a space and one of the units. */
export function amount(expected: NotationPart, units: readonly Unit[]): Piece {
  const unit = unitGroup(units)
  return term(
    `(?:(?<fraction>${FRACTION_PATTERN})|(?<value>${FIGURE_PATTERN})(?: ± (?<both>${FIGURE_PATTERN})| \\+(?<plus>${FIGURE_PATTERN})/-(?<minus>${FIGURE_PATTERN})` +
      `|(?:–|-| to )(?<max>${FIGURE_PATTERN}))?|(?<bound>min|max)\\. (?<limit>${FIGURE_PATTERN})) ${unit.pattern}`,
    expected,
    (found) => makeBand(found, unit.read(found['unit'])),
  )
}

/** Temperatures may be negative, so a range has no hyphen: `-10 to 45 °C`. */
function temperature(units: readonly Unit[]): Piece {
  const unit = unitGroup(units)
  const signedFigure = `-?${FIGURE_PATTERN}`
  return term(
    `(?:(?<value>${signedFigure})(?: ± (?<both>${FIGURE_PATTERN})| to (?<max>${signedFigure}))?|(?<bound>min|max)\\. (?<limit>${signedFigure})) ${unit.pattern}`,
    'temperature',
    (found) => makeBand(found, unit.read(found['unit'])),
  )
}

/** The sign of an angle may follow the figure directly: `90°`. */
export function angle(): Piece {
  return term(
    `(?<value>${FIGURE_PATTERN})(?: ± (?<both>${FIGURE_PATTERN})|(?:–|-| to )(?<max>${FIGURE_PATTERN}))?(?:°| °| deg| degree)`,
    'angle',
    (found) => makeBand(found, 'deg'),
  )
}

function makeBand(found: Readonly<Record<string, string>>, unit: Unit | undefined): object {
  const { fraction, value, both, plus = both, minus = both, max, bound, limit } = found
  if (bound === 'min' || bound === 'max') return { kind: 'limits', [bound]: limit, unit }
  if (max !== undefined) return { kind: 'limits', min: value, max, unit }
  if (plus !== undefined) return { kind: 'nominal with tolerance', value, minus, plus, unit }
  if (fraction === undefined) return { kind: 'nominal', value, unit }
  return { kind: 'nominal', value: fractionToDecimal(fraction), unit, asPrinted: fraction }
}

/** Converts `7 1/2` to `7.5`. Sixteenths need at most four decimals. */
export function fractionToDecimal(fraction: string): string {
  const [, whole = '0', top, bottom] = /^(?:(\d+) )?(\d+)\/(\d+)$/.exec(fraction) ?? []
  const digits = String((Number(top) * 10_000) / Number(bottom)).padStart(4, '0')
  return `${whole}.${digits.replace(/0+$/, '')}`
}

/** A figure with the other printed figures in round brackets. */
export const printed = (piece: Piece): Piece =>
  sequence(piece, optional(sequence(words(' ('), field('printed', listOf(piece, ', ')), words(')'))))

export const notStated = (): Piece => words('not stated', undefined, { kind: 'not stated' })

/** A printed value or `not stated`, with its source. */
export const withSource = (piece: Piece): Piece => withSourceFor(piece, (value) => [value])
export const value = (piece: Piece): Piece => withSource(oneOf(notStated(), printed(piece)))

/** A piece with a source only if its text has one. */
export const withOwnSource = (piece: Piece): Piece =>
  sequence(piece, optional(field('source', completeFromSection(sourceInBrackets()))))

/** A source whose id may come from the section or the sheet. */
const completeFromSection = ({ pattern, read }: Piece): Piece => ({
  pattern,
  read: (reading) => {
    const written = read(reading)
    return written && reading.cite(written as WrittenSource)
  },
})

/** The piece for amounts of a measure. */
export const amountOfMeasure = (measure: Measure, units: readonly Unit[]): Piece =>
  measure === 'temperature' ? temperature(units) : measure === 'angle' ? angle() : amount(measure, units)

const SOURCE_PATTERN = `(?:(?:(?<ref>${ID}) )?p\\. (?<page>${WORDS_PATTERN})|(?<whole>${ID}))(?:, (?<confidence>second hand|doubtful))?`
const makeSource = ({ ref, whole = ref, page, confidence = 'read' }: Readonly<Record<string, string>>) =>
  dropUndefined({ ref: whole, page, confidence }) as WrittenSource

/** A source without its brackets: `p. 60`, `bulletin p. 2`, `bulletin`, and `, doubtful`. */
export const bareSource = (): Piece => term(SOURCE_PATTERN, 'source', makeSource)
const sourceInBrackets = (): Piece => term(` \\[${SOURCE_PATTERN}\\]`, 'source', makeSource)

/** A piece with its source after it. `held` returns the leaves that the source applies to. */
export function withSourceFor(
  piece: Piece,
  held: (value: Readonly<Record<string, unknown>>) => readonly unknown[],
): Piece {
  const bracketPiece = sourceInBrackets()
  return {
    pattern: `${piece.pattern}(?:${bracketPiece.pattern})?`,
    read: (reading) => {
      const value = piece.read(reading) as Readonly<Record<string, unknown>> | undefined
      if (value === undefined) return undefined
      const from = reading.at + 2
      const written = retry(bracketPiece, reading) as WrittenSource | undefined
      if (written !== undefined)
        reading.marks.push({ path: `${reading.path}/source`, from, to: reading.at - 1 })
      for (const leaf of held(value)) addSource(leaf, written, reading)
      return value
    },
  }
}

/** A section's source applies to stated values, never to `not stated`. */
function addSource(leaf: unknown, written: WrittenSource | undefined, { cite }: Reading): void {
  const held = leaf as { kind?: unknown; source?: unknown } | undefined
  if (held === undefined || held.source !== undefined) return
  if (written === undefined && held.kind === 'not stated') return
  const source = cite(written)
  if (source !== undefined) held.source = source
}
