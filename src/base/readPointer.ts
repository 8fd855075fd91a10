import type { JsonPointer } from './finding.js'
import { splitPointer } from './splitPointer.js'

/**
 * Reads the value at a place of a document.
 * Only own properties count, so `/__proto__` or `/constructor` never reach anything but a document's own data.
 *
 * Equation: one own-property look-up a token; list places are `0` or a number without leading zeros.
 * @param document Plain JSON data.
 * @param pointer Where to look; `''` is the document itself.
 * @returns The value there; undefined where there is none, or the text is not a JSON Pointer.
 * @throws TypeError when `pointer` is not a string.
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
  let here = document
  for (const token of tokens) {
    if (typeof here !== 'object' || here === null) return undefined
    if (Array.isArray(here) && !/^(0|[1-9][0-9]*)$/.test(token)) return undefined
    if (!Object.hasOwn(here, token)) return undefined
    here = (here as Readonly<Record<string, unknown>>)[token]
  }
  return here
}
