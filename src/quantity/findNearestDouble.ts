import type { Exact } from './exact.js'

/** The double nearest to an exact fraction, ties to even; below the normal doubles it may be off by the last bit. */
export function findNearestDouble({ n, d }: Exact): number {
  const magnitude = n < 0n ? -n : n
  const shift = Math.max(0, 64 + d.toString(2).length - magnitude.toString(2).length)
  const scaled = magnitude << BigInt(shift)
  const quotient = scaled / d
  // at least 64 bits are kept, so the last bit can record that others were cut off
  const bits = Number(scaled % d === 0n ? quotient : quotient | 1n)
  // in two steps, since 2^−shift alone may be too small for a double
  const halfShift = Math.floor(shift / 2)
  const rounded = bits * 2 ** -halfShift * 2 ** (halfShift - shift)
  return n < 0n ? -rounded : rounded
}
