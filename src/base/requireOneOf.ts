import { quoteValue } from './quoteValue.js'

/** Throws TypeError for what is none of a few fixed words. */
export function requireOneOf(name: string, value: unknown, words: readonly unknown[]): void {
  if (!words.includes(value))
    throw new TypeError(`${name} must be one of ${words.join(', ')}, got ${quoteValue(value)}`)
}
