import type { JsonPointer } from '../base/index.js'
import { cleanText } from '../message/index.js'
import type { CardCell, CardList, Line, SpanTone } from './cardParts.js'

/** Words of the catalogue, without a pointer. */
export function writeWords(text: string): Line {
  return text === '' ? [] : [{ text }]
}

/** Text from the plan on one line, with its pointer. */
export function quoteText(text: string, pointer: JsonPointer, tone?: SpanTone): Line {
  return [{ text: cleanText(text), from: pointer, ...(tone !== undefined && { tone }) }]
}

/** Text from the plan; empty if it is not in the plan. */
export function quoteOptionalText(text: string | undefined, pointer: JsonPointer, tone?: SpanTone): Line {
  return text === undefined ? [] : quoteText(text, pointer, tone)
}

/** A label, a colon and the line; empty if the line is empty. */
export function addLabel(label: string, line: Line): Line {
  return line.length === 0 ? [] : [...writeWords(`${label}: `), ...line]
}

export function dropEmptyLines(lines: readonly Line[]): Line[] {
  return lines.filter((line) => line.length > 0)
}

/** Joins the lines that are not empty, with a separator between them. */
export function joinLines(lines: readonly Line[], separator: string): Line {
  return dropEmptyLines(lines).flatMap((line, index) => (index === 0 ? line : [{ text: separator }, ...line]))
}

/** The line with its first letter as a capital. */
export function capitalise(line: Line): Line {
  const [first, ...otherSpans] = line
  if (first === undefined) return line
  const [letter = ''] = first.text
  return [{ ...first, text: letter.toUpperCase() + first.text.slice(letter.length) }, ...otherSpans]
}

export function makeCell(...lines: readonly Line[]): CardCell {
  return { lines: dropEmptyLines(lines) }
}

/** A list as a part of a section; nothing if the list is empty. */
export function makeListPart(
  items: readonly (Line | CardList['items'][number])[],
  options: Partial<Pick<CardList, 'heading' | 'box' | 'picture'>> = {},
): CardList[] {
  if (items.length === 0) return []
  const completeItems = items.map((item) => ('line' in item ? item : { line: item, notes: [] }))
  return [{ kind: 'list', box: false, ...options, items: completeItems }]
}

export function joinSpans(line: Line): string {
  let joined = ''
  for (const { text } of line) joined += text
  return joined
}
