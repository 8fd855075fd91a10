import { quoteValue } from '../base/index.js'
import { SQUARE_DRIVES } from './standardSizes.js'

/**
 * Whether a designation is one of the usual square drives of wrenches, sockets and adaptors, for rules that look for
 * misprints.
 *
 * Source: ISO 1174 sizes from memory.
 */
export function isStandardSquareDrive(size: string): boolean {
  if (typeof size !== 'string') throw new TypeError(`size must be a string, got ${quoteValue(size)}`)
  return SQUARE_DRIVES.includes(size)
}
