import { quoteValue } from './quoteValue.js'

/** Throws TypeError for what is no object; a list is none. */
export function requireObject(name: string, value: unknown): void {
  if (typeof value !== 'object' || value === null || Array.isArray(value))
    throw new TypeError(
      `${name} must be an object, got ${Array.isArray(value) ? 'a list' : quoteValue(value)}`,
    )
}
