import type { JsonPointer } from './finding.js'
import { refuse } from './refuse.js'

/**
 * Splits a JSON Pointer into its tokens. To read a value, use {@link readPointer}.
 *
 * Method: tokens = the parts between slashes, `~1` read as `/`, then `~0` as `~`.
 * @param pointer `''` for the whole document, otherwise `/` before every token.
 * @returns The tokens, or undefined if the text is not a JSON Pointer.
 * @throws TypeError if `pointer` is not a string.
 *
 * Source: RFC 6901 (2013), sections 3 and 4.
 * @example
 * ```ts
 * import { splitPointer } from 'drivetrain-service/v1/spec'
 * // Which part does this pointer name?
 * splitPointer('/gearcases/front/openings/drain') // => ['gearcases', 'front', 'openings', 'drain']
 * ```
 */
export function splitPointer(pointer: JsonPointer): readonly string[] | undefined {
  if (typeof pointer !== 'string') throw refuse('pointer', pointer, 'a JSON Pointer as a string')
  if (pointer === '') return []
  if (!pointer.startsWith('/') || /~(?![01])/.test(pointer)) return undefined
  return pointer
    .slice(1)
    .split('/')
    .map((token) => token.replaceAll('~1', '/').replaceAll('~0', '~'))
}
