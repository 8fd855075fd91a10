import type { ElementContent } from 'hast'
import type { CardCaution, Line, SpanTone } from '../cardParts.js'
import { element, tag } from './element.js'

const CLASSES: Readonly<Record<SpanTone, string>> = {
  printed: 'printed',
  'also printed': 'also',
  computed: 'computed',
  gap: 'gap',
}

/** A line of the card; text from the plan has a pointer to its place. */
export function lineHtml(line: Line): ElementContent[] {
  return line.map(({ text, from, tone }) => {
    if (from === undefined) return { type: 'text', value: text }
    const properties = { dataFrom: from, ...(tone !== undefined && { className: [CLASSES[tone]] }) }
    return element('span', properties, text)
  })
}

/** Lines, each in a block. */
export function linesHtml(lines: readonly Line[], className: string): ElementContent[] {
  return lines.map((line) => tag(`div.${className}`, lineHtml(line)))
}

/** A caution with its signal word in front. */
export function cautionHtml({ word, line }: CardCaution): ElementContent[] {
  return [...(word === undefined ? [] : [tag('strong', `${word}: `)]), ...lineHtml(line)]
}
