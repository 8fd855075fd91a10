import { type JsonPointer, joinPointer, readPointer, splitPointer } from '../base/index.js'

/**
 * Compares two pointers by the order of the document's text, an object before its values. Pointers to nothing
 * come last.
 */
export function comparePointers(document: unknown, first: JsonPointer, second: JsonPointer): number {
  if (first === second) return 0
  const tokens = splitPointer(first) ?? []
  const secondTokens = splitPointer(second) ?? []
  let value = document
  for (const [depth, token] of tokens.entries()) {
    const secondToken = secondTokens[depth]
    if (secondToken === undefined) return 1
    if (token !== secondToken)
      return findKeyIndex(token, value) - findKeyIndex(secondToken, value) || (token < secondToken ? -1 : 1)
    value = readPointer(value, joinPointer([token]))
  }
  return -1
}

/** The index of a key in its object or list. For a missing key: the number of keys. */
function findKeyIndex(key: string, holder: unknown): number {
  if (Array.isArray(holder)) return /^[0-9]+$/.test(key) ? Number(key) : holder.length
  const keys = typeof holder === 'object' && holder !== null ? Object.keys(holder) : []
  const index = keys.indexOf(key)
  return index === -1 ? keys.length : index
}
