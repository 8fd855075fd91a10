/**
 * Values that are neither text nor numbers, and how a message shows them; some throw when they are converted to text.
 */
export const ANYTHING: readonly (readonly [unknown, string])[] = [
  [null, 'null'],
  [true, 'true'],
  [10n, 'bigint'],
  [Symbol('s'), 'symbol'],
  [() => 1, 'function'],
  [Object.create(null), 'an object'],
  [{ toString: {} }, 'an object'],
]
