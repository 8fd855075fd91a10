import { quoteValue } from './quoteValue.js'

/**
 * Makes the error for a wrong argument, or a wrong value inside one.
 *
 * @param kind - the `typeof` of correct values: a wrong value of this type gives a RangeError, any other a
 *   TypeError
 */
export function refuse(name: string, value: unknown, expected: string, kind = ''): Error {
  const ErrorType = typeof value === kind ? RangeError : TypeError
  return new ErrorType(`${name} must be ${expected}, got ${quoteValue(value)}`)
}
