import type { CardWords } from '../message/index.js'

/** A colon or semicolon without the space that a language may have before it. */
const PLAIN_SIGNS = /(?<![\s\u00a0\u202f])([:;]) /g

/**
 * Joins are written with `: ` and `; ` everywhere. This puts the spaces of the language there, in all texts that come from no
 * document: those of a document, which have a pointer, stay as they are.
 */
export function setSigns<Part>(part: Part, { signs }: Pick<CardWords, 'signs'>): Part {
  const { colon, semicolon } = signs
  if (colon === ': ' && semicolon === '; ') return part
  const setText = (text: string): string =>
    text.replaceAll(PLAIN_SIGNS, (_all, sign) => (sign === ':' ? colon : semicolon))
  const walk = (value: unknown): unknown => {
    if (Array.isArray(value)) return value.map(walk)
    if (typeof value !== 'object' || value === null) return value
    const isOwn = 'text' in value && typeof value.text === 'string' && !('from' in value)
    return Object.fromEntries(
      Object.entries(value).map(([key, item]) => [
        key,
        isOwn && key === 'text' ? setText(String(item)) : walk(item),
      ]),
    )
  }
  return walk(part) as Part
}
