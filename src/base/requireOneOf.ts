import { quoteValue } from './quoteValue.js'

/** Throws TypeError if the value is not one of the allowed values. */
export function requireOneOf(name: string, value: unknown, allowedValues: readonly unknown[]): void {
  if (!allowedValues.includes(value))
    throw new TypeError(`${name} must be one of ${allowedValues.join(', ')}, got ${quoteValue(value)}`)
}
