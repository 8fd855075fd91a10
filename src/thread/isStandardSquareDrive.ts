import { shown } from '../base/index.js'
import { SQUARE_DRIVES } from './standardSizes.js'

/**
 * Whether a designation is one of the usual square drives of wrenches, sockets and adaptors, for rules that look for
 * misprints.
 *
 * @param size - a designation such as `1/2 in`
 * @returns true where the size is in the list
 * @throws TypeError for anything but a string
 *
 * Source: ISO 1174 sizes from memory.
 *
 * @example
 * ```ts
 * import { isStandardSquareDrive } from 'drivetrain-service/v1/thread'
 * // Is half an inch a square drive?
 * isStandardSquareDrive('1/2 in') // => true
 * ```
 */
export function isStandardSquareDrive(size: string): boolean {
  if (typeof size !== 'string') throw new TypeError(`size must be a string, got ${shown(size)}`)
  return SQUARE_DRIVES.includes(size)
}
