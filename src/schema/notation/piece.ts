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
  readonly pattern: string
  readonly read: (reading: Reading) => unknown
}

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

/**
 * A piece without smaller pieces. Its value comes from the named groups found, or is an empty object, which
 * adds nothing to a {@link sequence}.
 */
export function term(
  pattern: string,
  expected?: NotationPart,
  build: (found: Readonly<Record<string, string>>) => unknown = (found) => found,
): Piece {
  let stickyPattern: RegExp | undefined
  return {
    pattern,
    read: (reading) => {
      stickyPattern ??= new RegExp(pattern, 'uy')
      stickyPattern.lastIndex = reading.at
      const match = stickyPattern.exec(reading.text)
      if (match === null) {
        if (expected !== undefined) noteExpected(reading, expected)
        return undefined
      }
      reading.at += match[0].length
      const found: Record<string, string> = {}
      for (const key in match.groups) {
        const value = match.groups[key]
        if (value !== undefined) found[key] = value
      }
      return build(found)
    },
  }
}

function noteExpected(reading: Reading, expected: NotationPart): void {
  if (reading.at < reading.furthest) return
  if (reading.at > reading.furthest) reading.expected = []
  reading.furthest = reading.at
  reading.expected.push(expected)
}

/** Fixed words and their value, by default an empty object. */
export const words = (text: string, expected?: NotationPart, value: object = {}): Piece => ({
  pattern: escapePattern(text),
  read: (reading) => {
    if (reading.text.startsWith(text, reading.at)) {
      reading.at += text.length
      return { ...value }
    }
    if (expected !== undefined) noteExpected(reading, expected)
    return undefined
  },
})

/** A pattern that matches exactly this text. */
export const escapePattern = (text: string): string => text.replace(/[.()[\]+*?|]/g, '\\$&')

/** One of these words, as the value of a key. */
export const keyedWord = (key: string, allowed: readonly string[], expected: NotationPart): Piece =>
  term(`(?<${key}>${allowed.map(escapePattern).join('|')})`, expected)

/** Adds a fixed value to a {@link sequence}. */
export const fixedValue = (value: object): Piece => ({ pattern: '', read: () => value })

/** One piece after the other; their values are merged into one object. */
export const sequence = (...pieces: readonly Piece[]): Piece => ({
  pattern: pieces.map(({ pattern }) => pattern).join(''),
  read: (reading) => {
    const joinedValue = {}
    for (const piece of pieces) {
      const part = piece.read(reading)
      if (part === undefined) return undefined
      Object.assign(joinedValue, part)
    }
    return joinedValue
  },
})

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

export const optional = (piece: Piece, defaultValue: object = {}): Piece => ({
  pattern: `(?:${piece.pattern})?`,
  read: (reading) => retry(piece, reading) ?? defaultValue,
})

export const oneOf = (...pieces: readonly Piece[]): Piece => ({
  pattern: `(?:${pieces.map(({ pattern }) => pattern).join('|')})`,
  read: (reading) => {
    for (const piece of pieces) {
      const value = retry(piece, reading)
      if (value !== undefined) return value
    }
    return undefined
  },
})

/** One or more of a piece. */
export const listOf = (piece: Piece, separator: string): Piece => {
  const separatorPiece = words(separator)
  const entry = (place: number): Piece => ({
    pattern: '',
    read: (reading) => {
      if (place > 0 && separatorPiece.read(reading) === undefined) return undefined
      return field(String(place), piece).read(reading)
    },
  })
  return {
    pattern: `${piece.pattern}(?:${separatorPiece.pattern}${piece.pattern})*`,
    read: (reading) => {
      const entries: unknown[] = []
      for (;;) {
        const place = entries.length
        const value = retry(entry(place), reading) as { readonly [place: string]: unknown } | undefined
        if (value === undefined) return place === 0 ? undefined : entries
        entries.push(value[place])
      }
    },
  }
}

/** At least one of these pieces, in this order; their values are merged. */
export const someOf = (pieces: readonly Piece[], separator: string): Piece => {
  const separatorPiece = words(separator)
  const patterns = pieces.map(({ pattern }) => pattern)
  const alternatives = patterns.map((first, place) => {
    const laterPatterns = patterns
      .slice(place + 1)
      .map((pattern) => `(?:${separatorPiece.pattern}${pattern})?`)
    return first + laterPatterns.join('')
  })
  return {
    pattern: `(?:${alternatives.join('|')})`,
    read: (reading) => {
      let joinedValue: object | undefined
      for (const piece of pieces) {
        const part = retry(joinedValue === undefined ? piece : sequence(separatorPiece, piece), reading)
        if (part !== undefined) joinedValue = { ...joinedValue, ...part }
      }
      return joinedValue
    },
  }
}
