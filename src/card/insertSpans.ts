import type { Line } from './cardParts.js'

const OPEN = '\ue000'
const CLOSE = '\ue001'
const FIRST_SIGN = 0xe100

/**
 * Inserts pieces of the plan into texts of the catalogue and keeps their pointers: the texts get a private character for
 * each piece, and the finished sentences are split at these characters.
 */
export function insertSpans<Key extends string>(
  pieces: Readonly<Partial<Record<Key, Line>>>,
  write: (signs: Readonly<Partial<Record<Key, string>>>) => readonly string[],
): Line[] {
  const signs: Partial<Record<Key, string>> = {}
  const lines: Line[] = []
  for (const key of Object.keys(pieces) as Key[]) {
    const line = pieces[key]
    if (line === undefined || line.length === 0) continue
    signs[key] = `${OPEN}${String.fromCharCode(FIRST_SIGN + lines.length)}${CLOSE}`
    lines.push(line)
  }
  return write(signs).map((text) =>
    text.split(/\ue000(.)\ue001/).flatMap((run, index): Line => {
      if (run === '') return []
      return index % 2 === 0 ? [{ text: run }] : (lines[run.charCodeAt(0) - FIRST_SIGN] ?? [])
    }),
  )
}
