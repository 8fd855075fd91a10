import type { Line, Span } from './cardParts.js'

const OPEN = '\ue000'
const CLOSE = '\ue001'
const FIRST_SIGN = 0xe100

/**
 * Inserts pieces of the plan into a text of the catalogue and keeps their pointers: the text gets a private character for
 * each piece, and the finished sentence is split at these characters.
 */
export function insertSpans<Key extends string>(
  pieces: Readonly<Partial<Record<Key, Line>>>,
  write: (signs: Readonly<Partial<Record<Key, string>>>) => string,
): Line {
  const signs: Partial<Record<Key, string>> = {}
  const lines: Line[] = []
  for (const key of Object.keys(pieces) as Key[]) {
    const line = pieces[key]
    if (line === undefined || line.length === 0) continue
    signs[key] = `${OPEN}${String.fromCharCode(FIRST_SIGN + lines.length)}${CLOSE}`
    lines.push(line)
  }
  const spans: Span[] = []
  for (const [index, run] of write(signs)
    .split(/\ue000(.)\ue001/)
    .entries()) {
    if (run === '') continue
    if (index % 2 === 0) spans.push({ text: run })
    else spans.push(...(lines[run.charCodeAt(0) - FIRST_SIGN] ?? []))
  }
  return spans
}
