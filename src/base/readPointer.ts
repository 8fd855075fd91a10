import type { JsonPointer } from './finding.js'
import { splitPointer } from './splitPointer.js'

/**
 * Reads the value at a JSON Pointer. It reads own properties only, so `/__proto__` and `/constructor` find
 * nothing outside the document.
 *
 * Method: one own-property lookup for each token; list indexes are `0` or a number without leading zeros.
 * @param document Plain JSON data.
 * @param pointer The JSON Pointer; `''` is the document itself.
 * @returns The value; undefined if there is none, or if `pointer` is not a JSON Pointer.
 * @throws TypeError if `pointer` is not a string.
 *
 * Source: RFC 6901 (2013), section 4.
 * @example
 * ```ts
 * import { readPointer } from 'drivetrain-service/v1/spec'
 * // What is the name of the front gearcase?
 * readPointer({ gearcases: { front: { name: 'Front differential' } } }, '/gearcases/front/name')
 * // => 'Front differential'
 * ```
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
