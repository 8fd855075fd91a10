/** Maximum depth of nested lists and objects. No document needs more than 12. */
export const MAX_DEPTH = 32

/** Maximum length of one text or key, in characters: enough for a note of a few pages. */
export const MAX_STRING_LENGTH = 20_000

/**
 * Maximum length of a document, in characters. Twenty years of hourly readings of one machine take about nine
 * million.
 */
export const MAX_TEXT_LENGTH = 50_000_000

/**
 * Maximum number of values in a document, since parts shared in memory can multiply. Twenty years of hourly
 * readings are half as many.
 */
export const MAX_VALUES = 1_000_000

/** Maximum number of keys of one object; the largest stock or sheet needs far fewer. */
export const MAX_KEYS = 5000

/** Maximum number of mistakes that are reported for one document. */
export const MAX_MISTAKES = 10_000

/** Maximum value of a measure, meter or price; no printed figure is that large. */
export const MAX_NUMBER = 1e9

/** Maximum count of one kind of thing, such as containers on a shelf or bolts of a cover. */
export const MAX_COUNT = 10_000

/** Absolute zero, in °C. */
export const ABSOLUTE_ZERO = -273.15

/** Maximum length of foreign text in a finding, in characters. */
const MAX_QUOTED_LENGTH = 80

/** Cuts foreign text to fit a message, never inside a character. */
export function cutText(text: string): string {
  if (text.length <= MAX_QUOTED_LENGTH) return text
  const end = /[\uD800-\uDBFF]/.test(text.charAt(MAX_QUOTED_LENGTH - 2))
    ? MAX_QUOTED_LENGTH - 2
    : MAX_QUOTED_LENGTH - 1
  return `${text.slice(0, end)}…`
}

/** Throws TypeError if a value contains itself or is nested deeper than any document. */
export function requireTree(name: string, value: unknown, parents: object[] = []): void {
  if (typeof value !== 'object' || value === null) return
  // Detects a cycle early; otherwise the walk is exponential.
  if (parents.length >= MAX_DEPTH || parents.includes(value))
    throw new TypeError(`${name} must be nested at most ${MAX_DEPTH} levels deep; parse the document first`)
  parents.push(value)
  for (const child of Object.values(value)) requireTree(name, child, parents)
  parents.pop()
}
