import type { NotationPart, SourceRef, TextPart } from '../../spec/index.js'

/** A source as a text gives it: `[p. 60]` names a page alone. */
export type WrittenSource = Partial<SourceRef> & Pick<SourceRef, 'confidence'>

/** A text that is being read. */
export interface Reading {
  readonly text: string
  at: number
  /** The pointer of what is being read. */
  path: string
  readonly marks: TextPart[]
  /** The furthest place at which something was expected, and what. */
  furthest: number
  expected: NotationPart[]
  /** The whole source of a value: what the text gives, completed from its section; undefined where neither has one. */
  readonly cite: (written: WrittenSource | undefined) => Partial<SourceRef> | undefined
}

/**
 * A part of the short notation: a pattern for schema readers and a reader for us, both made of the same smaller parts.
 * What the reader accepts is thus one way through the pattern, so it is never looser. A reader that does not find its
 * part gives undefined; who tries another then goes back with {@link retry}.
 */
export interface Piece {
  readonly pattern: string
  readonly read: (reading: Reading) => unknown
}

/** Reads one part, and goes back to where it began if it is not there. */
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
 * A part without parts of its own. Its value is made of the named groups that were found, or is an empty object, which
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

/** The words as they are, and what they mean: nothing but themselves if no value is given. */
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

/** A text that matches itself. */
export const escapePattern = (text: string): string => text.replace(/[.()[\]+*?|]/g, '\\$&')

/** One of these words under a key. */
export const keyedWord = (key: string, allowed: readonly string[], expected: NotationPart): Piece =>
  term(`(?<${key}>${allowed.map(escapePattern).join('|')})`, expected)

/** Adds a fixed part to a {@link sequence}. */
export const fixedValue = (value: object): Piece => ({ pattern: '', read: () => value })

/** One part after the other; their values are joined into one object. */
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

/** A part whose value is under a key. */
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

/** One or more of a part. */
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

/** At least one of these parts, in this order; their values are joined. */
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
