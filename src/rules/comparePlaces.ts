import { type JsonPointer, joinPointer, readPointer, splitPointer } from '../base/index.js'

/**
 * Compares two places of a document by the order of its text, an object before its values. Places that do not exist
 * come last.
 */
export function comparePlaces(document: unknown, first: JsonPointer, second: JsonPointer): number {
  if (first === second) return 0
  const firstTokens = splitPointer(first) ?? []
  const secondTokens = splitPointer(second) ?? []
  let value = document
  for (const [depth, token] of firstTokens.entries()) {
    const otherToken = secondTokens[depth]
    if (otherToken === undefined) return 1
    if (token !== otherToken)
      return indexOfKey(token, value) - indexOfKey(otherToken, value) || (token < otherToken ? -1 : 1)
    value = readPointer(value, joinPointer([token]))
  }
  return -1
}

/** The index of a key in its object or list; its length for a missing key. */
function indexOfKey(key: string, holder: unknown): number {
  if (Array.isArray(holder)) return /^[0-9]+$/.test(key) ? Number(key) : holder.length
  const keys = typeof holder === 'object' && holder !== null ? Object.keys(holder) : []
  const place = keys.indexOf(key)
  return place === -1 ? keys.length : place
}
