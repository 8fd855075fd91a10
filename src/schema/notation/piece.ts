import { dropUndefined } from '../../base/index.js'
import type { NotationPart, SourceRef, TextPart } from '../../spec/index.js'

/** A source as in a text: `[p. 60]` names only a page. */
export type WrittenSource = Partial<SourceRef> & Pick<SourceRef, 'confidence'>

/** The state of reading a text. */
export interface Reading {
  readonly text: string
  at: number
  /** The pointer of the current value. */
  path: string
  readonly marks: TextPart[]
  /** The furthest index where something was expected; `expected` says what. */
  furthest: number
  expected: NotationPart[]
  /**
   * Returns the full source of a value: from the text, completed from its section; undefined if neither has
   * one.
   */
  readonly cite: (written: WrittenSource | undefined) => Partial<SourceRef> | undefined
}

/**
 * A piece of short notation: a pattern for schema readers and a reader for us, both made of the same smaller
 * pieces. So the reader never accepts more than the pattern. A reader that does not find its piece returns
 * undefined; to try another piece, go back with {@link retry}.
 */
export interface Piece {
  readonly pattern: PatternParts
  readonly read: (reading: Reading) => unknown
}

/**
 * What a pattern consists of, in order: regular expressions, pieces, fixed words and alternatives. Only schemas need
 * the pattern, so only `buildPattern` puts the parts together.
 */
export type PatternParts =
  | string
  | Piece
  | { readonly words: string }
  | { readonly oneOf: readonly Piece[] }
  | readonly PatternParts[]

/** Reads a piece, and goes back to the start if it is not there. */
export function retry(piece: Piece, reading: Reading): unknown {
  const { at, marks, path } = reading
  const markCount = marks.length
  const value = piece.read(reading)
  if (value === undefined) {
    reading.at = at
    reading.path = path
    marks.length = markCount
  }
  return value
}

/** Notes what was expected at the furthest index. */
export function noteExpected(reading: Reading, expected: NotationPart | undefined): void {
  if (expected === undefined || reading.at < reading.furthest) return
  if (reading.at > reading.furthest) reading.expected = []
  reading.furthest = reading.at
  reading.expected.push(expected)
}

/** The found groups of a {@link term}. */
export type Found = Readonly<Record<string, string>>

/**
 * A piece without smaller pieces. Its value has the named groups found: with fixed keys before them, or as
 * `build` makes it of them.
 */
export function term(
  pattern: string,
  expected?: NotationPart,
  build: object | ((found: Found) => unknown) = {},
): Piece {
  let stickyPattern: RegExp | undefined
  return {
    pattern,
    read: (reading) => {
      stickyPattern ??= new RegExp(pattern, 'uy')
      stickyPattern.lastIndex = reading.at
      const match = stickyPattern.exec(reading.text)
      if (match === null) return noteExpected(reading, expected)
      reading.at += match[0].length
      const found: Found = dropUndefined({ ...match.groups })
      return typeof build === 'function' ? build(found) : { ...build, ...found }
    },
  }
}

/** Fixed words and their value, by default an empty object, which adds nothing to a {@link sequence}. */
export const words = (text: string, expected?: NotationPart, value: object = {}): Piece => ({
  pattern: { words: text },
  read: (reading) => {
    if (!reading.text.startsWith(text, reading.at)) return noteExpected(reading, expected)
    reading.at += text.length
    return { ...value }
  },
})

/** Words that are also the kind. */
export const kindWords = (kind: string, expected?: NotationPart): Piece => words(kind, expected, { kind })

/** A pattern group of words, as the value of a key. */
export const makeChoice = (key: string, allowed: readonly string[]): string =>
  `(?<${key}>${allowed.join('|')})`

/** One of these words, as the value of a key. */
export const keyedWord = (key: string, allowed: readonly string[], expected?: NotationPart): Piece =>
  term(makeChoice(key, allowed), expected)

/** A piece with a value made from the value of another piece. */
export const convert = (
  { pattern, read }: Piece,
  build: (value: object, reading: Reading) => unknown,
): Piece => ({
  pattern,
  read: (reading) => {
    const value = read(reading)
    return value && build(value, reading)
  },
})

/** A part of a {@link sequence}: a piece, fixed words, or a value that later parts may replace. */
export type Part = Piece | string | { readonly [key: string]: unknown; readonly read?: undefined }

/** One part after the other; their values are merged into one object. */
export function sequence(...parts: readonly Part[]): Piece {
  const pieces = parts.map((part): Piece => {
    if (typeof part === 'string') return words(part)
    return part.read ? part : { pattern: '', read: () => part }
  })
  return {
    pattern: pieces,
    read: (reading) => {
      const joinedValue = {}
      for (const piece of pieces) {
        const value = piece.read(reading)
        if (value === undefined) return undefined
        Object.assign(joinedValue, value)
      }
      return joinedValue
    },
  }
}

/** A piece with its value under a key. */
export const field = (key: string, { pattern, read }: Piece): Piece => ({
  pattern,
  read: (reading) => {
    const { at: from, path } = reading
    reading.path = `${path}/${key}`
    const value = read(reading)
    if (value === undefined) return undefined
    reading.marks.push({ path: reading.path, from, to: reading.at })
    reading.path = path
    return { [key]: value }
  },
})

/** Fixed words, then a piece with its value under a key. */
export const labelled = (label: string, key: string, piece: Piece, expected?: NotationPart): Piece =>
  sequence(words(label, expected), field(key, piece))

export function optional(...parts: readonly Part[]): Piece {
  const piece = sequence(...parts)
  return { pattern: ['(', piece, ')?'], read: (reading) => retry(piece, reading) ?? {} }
}

/** Optional parts after a comma. */
export const afterComma = (...parts: readonly Part[]): Piece => optional(', ', ...parts)

export const oneOf = (...pieces: readonly Piece[]): Piece => ({
  pattern: { oneOf: pieces },
  read: (reading) => {
    for (const piece of pieces) {
      const value = retry(piece, reading)
      if (value !== undefined) return value
    }
    return undefined
  },
})

/** One or more of a piece. */
export function listOf(piece: Piece, separator: string): Piece {
  const separatorPiece = words(separator)
  return {
    pattern: [piece, '(', separatorPiece, piece, ')*'],
    read: (reading) => {
      const entries: unknown[] = []
      for (;;) {
        const entry = field(String(entries.length), piece)
        const found = retry(entries.length === 0 ? entry : sequence(separatorPiece, entry), reading)
        if (found === undefined) return entries.length === 0 ? undefined : entries
        entries.push(...Object.values(found as object))
      }
    },
  }
}

/** At least one of these pieces, in this order; their values are merged. */
export function someOf(pieces: readonly Piece[], separator: string): Piece {
  const furtherPieces = pieces.map((piece) => optional(sequence(separator, piece)))
  return oneOf(...pieces.map((piece, at) => sequence(piece, ...furtherPieces.slice(at + 1))))
}
