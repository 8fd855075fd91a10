import { quoteValue } from './quoteValue.js'

/**
 * The error for an argument, or a place in one, that is not what it must be.
 *
 * @param kind - what `typeof` says of values that may be right; of any other kind it is a TypeError, else a RangeError
 */
export function refuse(name: string, value: unknown, expected: string, kind = ''): Error {
  const Misuse = typeof value === kind ? RangeError : TypeError
  return new Misuse(`${name} must be ${expected}, got ${quoteValue(value)}`)
}
