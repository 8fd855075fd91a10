import type { JsonPointer } from '../finding.js'

/**
 * Writes a JSON Pointer from its tokens, for findings and steps that name a place in a document.
 * The way back is {@link splitPointer}.
 *
 * Equation: `~` written as `~0`, then `/` as `~1`; a slash before every token.
 * @param tokens Keys and list places, outermost first; a list place is a whole number from 0.
 * @returns The pointer; `''` for no tokens.
 *
 * Source: RFC 6901 (2013), section 3.
 * @example
 * ```ts
 * import { joinPointer } from 'drivetrain-service/v1/spec'
 * // How is the first seal of a plug pointed at?
 * joinPointer(['gearcases', 'front', 'openings', 'drain', 'seals', 0])
 * // => '/gearcases/front/openings/drain/seals/0'
 * ```
 */
export function joinPointer(tokens: readonly (string | number)[]): JsonPointer {
  return tokens.map((token) => `/${String(token).replaceAll('~', '~0').replaceAll('/', '~1')}`).join('')
}
