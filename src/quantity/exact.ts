/** An exact fraction; `d` is positive. It may not be reduced. */
export interface Exact {
  readonly n: bigint
  readonly d: bigint
}

/**
 * The exact value of a number as written: a figure, a factor (`4546.09/3785.411784`), or a JSON number, which
 * means its shortest decimal. Here 0.1 is a tenth; for the binary value, use {@link exactOfDouble}.
 */
export function exactOf(value: number | string): Exact {
  const text = String(value)
  const slash = text.indexOf('/')
  if (slash >= 0) return divide(exactOf(text.slice(0, slash)), exactOf(text.slice(slash + 1)))
  const exponentMark = text.indexOf('e')
  if (exponentMark >= 0)
    return multiply(exactOf(text.slice(0, exponentMark)), powerOfTen(Number(text.slice(exponentMark + 1))))
  const point = text.indexOf('.')
  if (point < 0) return { n: BigInt(text), d: 1n }
  return {
    n: BigInt(text.slice(0, point) + text.slice(point + 1)),
    d: 10n ** BigInt(text.length - point - 1),
  }
}

/** The exact binary value of a finite number, as `convert` uses it. */
export function exactOfDouble(value: number): Exact {
  let exponent = 0
  let whole = value
  while (!Number.isInteger(whole)) {
    // multiplying by a power of two is exact, and the fraction of a double has at most 1074 bits
    const step = Math.abs(whole) < 1 ? 512 : 32
    whole *= 2 ** step
    exponent += step
  }
  return { n: BigInt(whole), d: 1n << BigInt(exponent) }
}

export function multiply(left: Exact, right: Exact): Exact {
  return { n: left.n * right.n, d: left.d * right.d }
}

export function divide(left: Exact, right: Exact): Exact {
  return right.n < 0n
    ? { n: -left.n * right.d, d: left.d * -right.n }
    : { n: left.n * right.d, d: left.d * right.n }
}

export function add(left: Exact, right: Exact): Exact {
  return { n: left.n * right.d + right.n * left.d, d: left.d * right.d }
}

export function subtract(left: Exact, right: Exact): Exact {
  return { n: left.n * right.d - right.n * left.d, d: left.d * right.d }
}

export function compareExact(left: Exact, right: Exact): -1 | 0 | 1 {
  const first = left.n * right.d
  const second = right.n * left.d
  return first < second ? -1 : first > second ? 1 : 0
}

export function minExact(left: Exact, right: Exact): Exact {
  return compareExact(left, right) <= 0 ? left : right
}

function floorDivide(n: bigint, d: bigint): bigint {
  const quotient = n / d
  return n % d < 0n ? quotient - 1n : quotient
}

/** Rounds a fraction to a whole number: down, up, or to nearest with ties to even (ASTM E29). */
export function roundExact(value: Exact, rounding: 'down' | 'up' | 'nearest'): bigint {
  if (rounding === 'down') return floorDivide(value.n, value.d)
  if (rounding === 'up') return -floorDivide(-value.n, value.d)
  const floor = floorDivide(value.n, value.d)
  const doubleRemainder = (value.n - floor * value.d) * 2n
  if (doubleRemainder > value.d) return floor + 1n
  return doubleRemainder === value.d ? floor + (floor & 1n) : floor
}

/** Writes a fraction as a decimal string with a number of decimals. */
export function formatExact(
  value: Exact,
  decimals: number,
  rounding: 'down' | 'up' | 'nearest' = 'nearest',
): string {
  return formatDecimal(roundExact(multiply(value, powerOfTen(decimals)), rounding), decimals)
}

/** Writes `whole` × 10^−`decimals` as a decimal string with all its decimals. */
export function formatDecimal(whole: bigint, decimals: number): string {
  if (decimals <= 0) return String(whole * 10n ** BigInt(-decimals))
  const digits = String(whole < 0n ? -whole : whole).padStart(decimals + 1, '0')
  const pointPosition = digits.length - decimals
  return `${whole < 0n ? '-' : ''}${digits.slice(0, pointPosition)}.${digits.slice(pointPosition)}`
}

export function powerOfTen(exponent: number): Exact {
  return exponent < 0 ? { n: 1n, d: 10n ** BigInt(-exponent) } : { n: 10n ** BigInt(exponent), d: 1n }
}

/** The smallest whole number whose product with each fraction is whole. */
export function commonDenominator(fractions: readonly Exact[]): bigint {
  return fractions.reduce((common, { d }) => (common / greatestCommonDivisor(common, d)) * d, 1n)
}

export function greatestCommonDivisor(first: bigint, second: bigint): bigint {
  let left = first
  let right = second
  while (right !== 0n) [left, right] = [right, left % right]
  return left
}

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
