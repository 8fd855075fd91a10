import type { JsonPointer } from '../finding.js'
import { splitPointer } from '../spec/splitPointer.js'

/**
 * Which of two places of a document comes first for its reader: by the order of keys and entries as written,
 * an object before what it holds. Places that are not there come last.
 */
export function comparePlaces(document: unknown, first: JsonPointer, second: JsonPointer): number {
  if (first === second) return 0
  const firstTokens = splitPointer(first) ?? []
  const secondTokens = splitPointer(second) ?? []
  let here = document
  for (const [depth, token] of firstTokens.entries()) {
    const other = secondTokens[depth]
    if (other === undefined) return 1
    const keys = typeof here === 'object' && here !== null ? Object.keys(here) : []
    if (token !== other) return placeOf(token, keys) - placeOf(other, keys) || (token < other ? -1 : 1)
    here = keys.includes(token) ? (here as Readonly<Record<string, unknown>>)[token] : undefined
  }
  return -1
}

function placeOf(key: string, keys: readonly string[]): number {
  const place = keys.indexOf(key)
  return place === -1 ? keys.length : place
}
