import { refuse } from '../base/index.js'
import { SQUARE_DRIVES } from './standardSizes.js'

/**
 * Whether a designation is one of the usual square drives of wrenches, sockets and adaptors, for rules that look for
 * misprints.
 *
 * Source: ISO 1174 sizes from memory.
 */
export function isStandardSquareDrive(size: string): boolean {
  if (typeof size !== 'string') throw refuse('size', size, 'a string')
  return SQUARE_DRIVES.includes(size)
}
