/** What is neither text nor number, and how a message shows it: some of it throws where it is made into a text. */
export const ANYTHING: readonly (readonly [unknown, string])[] = [
  [null, 'null'],
  [true, 'true'],
  [10n, 'bigint'],
  [Symbol('s'), 'symbol'],
  [() => 1, 'function'],
  [Object.create(null), 'object'],
  [{ toString: {} }, 'object'],
]
