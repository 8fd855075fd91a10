import { type JsonPointer, joinPointer, readPointer, splitPointer } from '../base/index.js'

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
    if (token !== other) return placeOf(token, here) - placeOf(other, here) || (token < other ? -1 : 1)
    here = readPointer(here, joinPointer([token]))
  }
  return -1
}

/** The place of a key among its neighbours; after all of them where it is missing. */
function placeOf(key: string, holder: unknown): number {
  if (Array.isArray(holder)) return /^[0-9]+$/.test(key) ? Number(key) : holder.length
  const keys = typeof holder === 'object' && holder !== null ? Object.keys(holder) : []
  const place = keys.indexOf(key)
  return place === -1 ? keys.length : place
}
