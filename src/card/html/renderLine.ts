import type { CardCaution, CardModel, Line, SpanTone } from '../cardParts.js'
import { createElement, createTag, type Html, type HtmlChild } from './createElement.js'

const TONE_CLASSES: Readonly<Record<SpanTone, string>> = {
  printed: 'printed',
  'also printed': 'also',
  computed: 'computed',
  gap: 'gap',
  strong: 'strong',
}

/** A line of the card. Text from the plan has its pointer. */
export function renderLine(line: Line): HtmlChild[] {
  return line.map(({ text, from, tone }) => {
    if (from === undefined && tone === undefined) return text
    return createElement('span', { 'data-from': from, class: tone && TONE_CLASSES[tone] }, text)
  })
}

/** Renders each line in its own element, such as `div.note`. */
export function renderLines(lines: readonly Line[], name: string): Html[] {
  return lines.map((line) => createTag(name, renderLine(line)))
}

/** A caution with its signal word in front. */
export function renderCaution(
  { word, line }: CardCaution,
  { colon = ': ' }: CardModel['marks'],
): HtmlChild[] {
  return [...(word === undefined ? [] : [createTag('strong', `${word}${colon}`)]), ...renderLine(line)]
}
