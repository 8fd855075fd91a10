import fc from 'fast-check'

/** Doubles of all kinds: any bits, a few digits, long decimals, whole numbers, every power of ten. */
export const anyDouble = fc.oneof(
  fc.double({ noNaN: true, noDefaultInfinity: true }),
  fc
    .tuple(fc.integer({ min: -99999, max: 99999 }), fc.integer({ min: 0, max: 6 }))
    .map(([n, d]) => n / 10 ** d),
  fc
    .tuple(fc.double({ min: 1, max: 10, noNaN: true }), fc.integer({ min: -300, max: 300 }))
    .map(([m, e]) => m * 10 ** e),
  fc.maxSafeInteger(),
  fc.double({ min: -1e6, max: 1e6, noNaN: true }),
)
