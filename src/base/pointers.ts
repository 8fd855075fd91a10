import type { JsonPointer } from './finding.js'
import { quoteValue, refuse } from './refuse.js'

/**
 * Makes a JSON Pointer (RFC 6901, 2013) from keys and list indexes, outermost first: in each, `~` becomes
 * `~0`, then `/` becomes `~1`. Throws if a token is neither text nor a whole number from 0.
 */
export function joinPointer(tokens: readonly (string | number)[]): JsonPointer {
  if (!Array.isArray(tokens)) throw new TypeError(`tokens must be a list, got ${quoteValue(tokens)}`)
  return tokens.map((token: string | number, index) => `/${escapeToken(token, index)}`).join('')
}

function escapeToken(token: string | number, index: number): string {
  if (typeof token === 'string') return token.replaceAll('~', '~0').replaceAll('/', '~1')
  if (Number.isSafeInteger(token) && token >= 0) return String(token)
  const ErrorType = typeof token === 'number' ? RangeError : TypeError
  throw new ErrorType(`tokens[${index}] must be a key or a whole number from 0, got ${quoteValue(token)}`)
}

/** A pointer one token longer. */
export const appendKey = (path: JsonPointer, key: string | number): JsonPointer =>
  typeof key === 'string' && /[~/]/.test(key) ? path + joinPointer([key]) : `${path}/${key}`

/** The tokens of a JSON Pointer; undefined if the text is not one. The reverse of `joinPointer`. */
export function splitPointer(pointer: JsonPointer): readonly string[] | undefined {
  if (typeof pointer !== 'string') throw refuse('pointer', pointer, 'a JSON Pointer as a string')
  if (pointer === '') return []
  if (!pointer.startsWith('/')) return undefined
  const tokens = pointer.slice(1).split('/')
  if (!pointer.includes('~')) return tokens
  if (/~(?![01])/.test(pointer)) return undefined
  return tokens.map((token) => token.replaceAll('~1', '/').replaceAll('~0', '~'))
}

/**
 * The value at a JSON Pointer; undefined if there is none. Reads own properties only, so `/__proto__` and
 * `/constructor` find nothing outside the document.
 */
export function readPointer(document: unknown, pointer: JsonPointer): unknown {
  const tokens = splitPointer(pointer)
  if (tokens === undefined) return undefined
  let value = document
  for (const token of tokens) {
    if (typeof value !== 'object' || value === null) return undefined
    if (Array.isArray(value) && !/^(0|[1-9][0-9]*)$/.test(token)) return undefined
    if (!Object.hasOwn(value, token)) return undefined
    value = (value as Readonly<Record<string, unknown>>)[token]
  }
  return value
}
