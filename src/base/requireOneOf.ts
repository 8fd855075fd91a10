import { quoteValue } from './quoteValue.js'

/** Throws TypeError if the value is not one of the words. */
export function requireOneOf(name: string, value: unknown, words: readonly unknown[]): void {
  if (!words.includes(value))
    throw new TypeError(`${name} must be one of ${words.join(', ')}, got ${quoteValue(value)}`)
}
