import type { Exact } from './exact.js'

/** The double nearest to an exact fraction of ordinary size, ties to even. */
export function nearestDouble({ n, d }: Exact): number {
  const magnitude = n < 0n ? -n : n
  const shift = Math.max(0, 64 + d.toString(2).length - magnitude.toString(2).length)
  const scaled = magnitude << BigInt(shift)
  const quotient = scaled / d
  // at least 64 bits stand before the cut, so the last one can carry that something was cut off
  const rounded = Number(scaled % d === 0n ? quotient : quotient | 1n) * 2 ** -shift
  return n < 0n ? -rounded : rounded
}
