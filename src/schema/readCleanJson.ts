import { MAX_DEPTH, MAX_KEYS, MAX_STRING_LENGTH } from '../base/index.js'
import { FORBIDDEN_KEYS } from './shapes/textShapes.js'

/** In characters. A longer text may have more values than a document, so it is scanned first. */
export const MAX_CLEAN_LENGTH = 1_000_000

/**
 * The value of a JSON text that needs no further look: valid, no key twice, within the limits of documents. Undefined for
 * any other text, and for a long one. `JSON.parse` is ten times as fast as a scan, but keeps the last of two equal
 * keys: then the value has fewer keys than the text.
 */
export function readCleanJson(text: string): unknown {
  if (text.length > MAX_CLEAN_LENGTH) return undefined
  try {
    const value: unknown = JSON.parse(text)
    return hasEachKeyOnce(text, countKeys(value, 0)) ? value : undefined
  } catch {
    return undefined
  }
}

/** The number of keys in a value; NaN if it is outside the limits. */
function countKeys(value: unknown, depth: number): number {
  if (typeof value === 'string') return value.length > MAX_STRING_LENGTH ? Number.NaN : 0
  // `1e999` is read as infinity.
  if (typeof value === 'number') return Number.isFinite(value) ? 0 : Number.NaN
  if (typeof value !== 'object' || value === null) return 0
  if (depth >= MAX_DEPTH) return Number.NaN
  let count = 0
  if (Array.isArray(value)) for (const item of value) count += countKeys(item, depth + 1)
  else {
    const keys = Object.keys(value)
    if (keys.length > MAX_KEYS) return Number.NaN
    for (const key of keys) {
      if (key.length > MAX_STRING_LENGTH || FORBIDDEN_KEYS.includes(key)) return Number.NaN
      count += 1 + countKeys((value as Readonly<Record<string, unknown>>)[key], depth + 1)
    }
  }
  return count
}

/** Whether no key of a valid JSON text is repeated; `keys` is the number of keys in its value. */
export function hasEachKeyOnce(text: string, keys: number): boolean {
  // Most texts have no colon in a string: then each colon follows a quote. A repeated key would add a colon.
  let colons = 0
  for (let at = text.indexOf(':'); at >= 0; at = text.indexOf(':', at + 1)) {
    if (text.charCodeAt(at - 1) !== QUOTE) return countColons(text) === keys
    colons++
  }
  return colons === keys || countColons(text) === keys
}

/** The colons of a valid JSON text outside its strings: one after each key. */
function countColons(text: string): number {
  let count = 0
  for (let at = 0; at < text.length; at++) {
    const code = text.charCodeAt(at)
    if (code === COLON) count++
    else if (code === QUOTE)
      for (at++; text.charCodeAt(at) !== QUOTE; at++) if (text.charCodeAt(at) === BACKSLASH) at++
  }
  return count
}

const QUOTE = 0x22
const COLON = 0x3a
const BACKSLASH = 0x5c
