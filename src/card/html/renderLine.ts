import type { ElementContent } from 'hast'
import type { CardCaution, Line, SpanTone } from '../cardParts.js'
import { createElement, createTag } from './createElement.js'

const TONE_CLASSES: Readonly<Record<SpanTone, string>> = {
  printed: 'printed',
  'also printed': 'also',
  computed: 'computed',
  gap: 'gap',
}

/** A line of the card. Text from the plan has its pointer. */
export function renderLine(line: Line): ElementContent[] {
  return line.map(({ text, from, tone }) => {
    if (from === undefined) return { type: 'text', value: text }
    const properties = { dataFrom: from, ...(tone !== undefined && { className: [TONE_CLASSES[tone]] }) }
    return createElement('span', properties, text)
  })
}

/** Renders each line in its own block. */
export function renderLines(lines: readonly Line[], className: string): ElementContent[] {
  return lines.map((line) => createTag(`div.${className}`, renderLine(line)))
}

/** A caution with its signal word in front. */
export function renderCaution({ word, line }: CardCaution): ElementContent[] {
  return [...(word === undefined ? [] : [createTag('strong', `${word}: `)]), ...renderLine(line)]
}
