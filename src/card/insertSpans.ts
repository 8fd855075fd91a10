import type { Line } from './cardParts.js'

const OPEN_MARK = '\ue000'
const CLOSE_MARK = '\ue001'
const FIRST_PLACEHOLDER = 0xe100

/**
 * Inserts pieces of the plan into texts of the catalogue and keeps their pointers. Each piece is a private character
 * in the text; the finished sentence is split at these characters.
 */
export function insertSpans<Key extends string>(
  pieces: Readonly<Partial<Record<Key, Line>>>,
  writeTexts: (placeholders: Readonly<Partial<Record<Key, string>>>) => readonly string[],
): Line[] {
  const placeholders: Partial<Record<Key, string>> = {}
  const lines: Line[] = []
  for (const key of Object.keys(pieces) as Key[]) {
    const line = pieces[key]
    if (line === undefined || line.length === 0) continue
    placeholders[key] = `${OPEN_MARK}${String.fromCharCode(FIRST_PLACEHOLDER + lines.length)}${CLOSE_MARK}`
    lines.push(line)
  }
  return writeTexts(placeholders).map((text) =>
    text.split(/\ue000(.)\ue001/).flatMap((piece, index): Line => {
      if (piece === '') return []
      return index % 2 === 0 ? [{ text: piece }] : (lines[piece.charCodeAt(0) - FIRST_PLACEHOLDER] ?? [])
    }),
  )
}
