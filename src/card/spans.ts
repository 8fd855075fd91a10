import type { JsonPointer } from '../base/index.js'
import { cleanText } from '../message/index.js'
import type { Line, Span, SpanTone } from './cardParts.js'

/** The catalogue's own words. */
export function ownWords(text: string): Line {
  return text === '' ? [] : [{ text }]
}

/** Text that comes from the plan, made fit for one line, with its place in the plan. */
export function quoted(text: string, from: JsonPointer, tone?: SpanTone): Line {
  const span: Span = { text: cleanText(text), from, ...(tone !== undefined && { tone }) }
  return [span]
}

/** Lines set one after the other with a separator between them; empty ones leave no separator. */
export function joined(lines: readonly Line[], separator: string): Line {
  const filled = lines.filter((line) => line.length > 0)
  return filled.flatMap((line, index) => (index === 0 ? line : [{ text: separator }, ...line]))
}

/** The line with its first letter as a capital, for names that documents write in small letters. */
export function capitalised(line: Line): Line {
  const [first, ...rest] = line
  if (first === undefined) return line
  const [letter = ''] = first.text
  return [{ ...first, text: letter.toUpperCase() + first.text.slice(letter.length) }, ...rest]
}
