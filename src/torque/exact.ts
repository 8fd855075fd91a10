import { compareExact, type Exact, exactOfText } from '../quantity/index.js'

/*
 * A mark either lies inside a stated band or it does not, and doubles cannot say so at the boundary: this room
 * compares fractions. Internal; nothing of it leaves the room.
 */

export const ZERO: Exact = { n: 0n, d: 1n }

/**
 * The exact value of a decimal text, or of a number read by its shortest decimal: a scale step of 0.2 N·m in a JSON
 * file means two tenths, not the binary double next to it.
 */
export function exactOf(value: number | string): Exact {
  const text = String(value)
  const power = text.indexOf('e')
  if (power < 0) return exactOfText(text)
  const { n, d } = exactOfText(text.slice(0, power))
  const exponent = Number(text.slice(power + 1))
  return exponent < 0 ? { n, d: d * 10n ** BigInt(-exponent) } : { n: n * 10n ** BigInt(exponent), d }
}

export function lower(first: Exact, second: Exact): Exact {
  return compareExact(first, second) <= 0 ? first : second
}

export function lesserCount(first: bigint, second: bigint): bigint {
  if (first < second) return first
  return second
}

export function greaterCount(first: bigint, second: bigint): bigint {
  if (first > second) return first
  return second
}
