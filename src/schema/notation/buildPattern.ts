import type { Notation } from './notation.js'
import type { PatternParts } from './piece.js'

/** The pattern of a notation for every schema reader: without group names, and for the whole text. */
export function buildPattern({ piece }: Notation): string {
  return `^(${join(piece()).replaceAll(/\(\?(?::|<[a-zA-Z]+>)/g, '(')})$`
}

function join(parts: PatternParts): string {
  if (typeof parts === 'string') return parts
  if ('words' in parts) return parts.words.replace(/[.()[\]+*?|]/g, '\\$&')
  if ('oneOf' in parts) return `(${parts.oneOf.map(join).join('|')})`
  if ('pattern' in parts) return join(parts.pattern)
  return parts.map(join).join('')
}
