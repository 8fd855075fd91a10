import type { JsonPointer } from '../base/index.js'
import { cleanText } from '../message/index.js'
import type { CardCell, CardList, Line, SpanTone } from './cardParts.js'

/** The catalogue's own words. */
export function ownWords(text: string): Line {
  return text === '' ? [] : [{ text }]
}

/** Text that comes from the plan, made fit for one line, with its place in the plan. */
export function quoted(text: string, from: JsonPointer, tone?: SpanTone): Line {
  return [{ text: cleanText(text), from, ...(tone !== undefined && { tone }) }]
}

/** A text that the plan may omit; nothing where it does. */
export function quotedIf(text: string | undefined, from: JsonPointer, tone?: SpanTone): Line {
  return text === undefined ? [] : quoted(text, from, tone)
}

/** A label and a colon before a line; nothing where the line is empty. */
export function labelled(label: string, line: Line): Line {
  return line.length === 0 ? [] : [...ownWords(`${label}: `), ...line]
}

export function filled(lines: readonly Line[]): Line[] {
  return lines.filter((line) => line.length > 0)
}

/** Lines set one after the other with a separator between them; empty ones leave no separator. */
export function joined(lines: readonly Line[], separator: string): Line {
  return filled(lines).flatMap((line, index) => (index === 0 ? line : [{ text: separator }, ...line]))
}

/** The line with its first letter as a capital, for names that documents write in small letters. */
export function capitalised(line: Line): Line {
  const [first, ...rest] = line
  if (first === undefined) return line
  const [letter = ''] = first.text
  return [{ ...first, text: letter.toUpperCase() + first.text.slice(letter.length) }, ...rest]
}

export function cell(...lines: readonly Line[]): CardCell {
  return { lines: filled(lines) }
}

/** A list of lines or items, to spread among the parts of a section; none where it has no item. */
export function listPart(
  items: readonly (Line | CardList['items'][number])[],
  more: Partial<Pick<CardList, 'heading' | 'box' | 'picture'>> = {},
): CardList[] {
  if (items.length === 0) return []
  const whole = items.map((item) => ('line' in item ? item : { line: item, notes: [] }))
  return [{ kind: 'list', box: false, ...more, items: whole }]
}

export function plainText(line: Line): string {
  return line.map(({ text }) => text).join('')
}
