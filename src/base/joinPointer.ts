import type { JsonPointer } from './finding.js'
import { quoteValue } from './quoteValue.js'

/**
 * Makes a JSON Pointer from its tokens, to name a value in a document. The reverse is {@link splitPointer}.
 *
 * Method: in each token `~` becomes `~0`, then `/` becomes `~1`; a slash goes before every token.
 * @param tokens Keys and list indexes, outermost first; an index is a whole number from 0.
 * @returns The pointer; `''` for no tokens.
 * @throws TypeError if `tokens` is not a list, or a token is neither text nor number; RangeError if a number
 *   is not a list index.
 *
 * Source: RFC 6901 (2013), section 3.
 * @example
 * ```ts
 * import { joinPointer } from 'drivetrain-service/v1/spec'
 * // What is the pointer to the first seal of a plug?
 * joinPointer(['gearcases', 'front', 'openings', 'drain', 'seals', 0])
 * // => '/gearcases/front/openings/drain/seals/0'
 * ```
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
