import { quoteValue } from './quoteValue.js'

/** Throws TypeError if the value is not an object, or is a list. */
export function requireObject(name: string, value: unknown): void {
  if (typeof value !== 'object' || value === null || Array.isArray(value))
    throw new TypeError(
      `${name} must be an object, got ${Array.isArray(value) ? 'a list' : quoteValue(value)}`,
    )
}
