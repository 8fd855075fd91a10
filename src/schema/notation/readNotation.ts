import type { NotationPart, TextPart } from '../../spec/index.js'
import { MAX_NOTATION_LENGTH, type Notation } from './notation.js'
import type { Reading } from './piece.js'

/** The value that a string means, or the index where reading stopped and what was expected there. */
export type NotationReading =
  | { readonly ok: true; readonly value: unknown; readonly marks: readonly TextPart[] }
  | { readonly ok: false; readonly at: number; readonly expected: readonly NotationPart[] }

/** Reads a text in a notation. `cite` completes sources from the text's section. */
export function readNotation(
  notation: Notation,
  text: string,
  cite: Reading['cite'] = (written) => written,
): NotationReading {
  if (text.length > MAX_NOTATION_LENGTH && [...text].length > MAX_NOTATION_LENGTH)
    return { ok: false, at: MAX_NOTATION_LENGTH, expected: ['shorter text'] }
  const forbiddenAt = text.search(notation.forbidden())
  if (forbiddenAt >= 0) return { ok: false, at: forbiddenAt, expected: [] }
  const reading: Reading = { text, at: 0, path: '', marks: [], furthest: 0, expected: [], cite }
  const value = notation.piece().read(reading)
  if (value !== undefined && reading.at === text.length) return { ok: true, value, marks: reading.marks }
  const at = Math.max(reading.furthest, reading.at)
  return { ok: false, at, expected: at > reading.furthest ? [] : reading.expected }
}
