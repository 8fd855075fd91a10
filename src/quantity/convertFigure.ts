import { type Exact, formatExact, greatestCommonDivisor, multiply, powerOfTen } from './exact.js'
import { requireFigure } from './figure.js'
import { convertExact } from './findUnitPair.js'
import type { Figure, Unit } from './unit.js'

/** A converted figure with its exact digits. */
export interface ConvertedFigure {
  /** All digits if their number is finite, otherwise the first 34 significant digits, rounded to nearest. */
  readonly digits: string
  readonly terminates: boolean
}

const MAX_DIGITS = 34

/**
 * Converts a printed figure with all its digits, to check a conversion by hand. To print a second figure next to a manual's
 * figure use {@link secondUnit}.
 *
 * to = from × ratio (temperatures: × ratio + offset), in exact fractions.
 */
export function convertFigure(figure: Figure, from: Unit, to: Unit): ConvertedFigure {
  const value = convertExact(requireFigure(figure), from, to)
  const commonDivisor = greatestCommonDivisor(value.n < 0n ? -value.n : value.n, value.d)
  const reducedFraction = { n: value.n / commonDivisor, d: value.d / commonDivisor }
  const decimals = countFractionDecimals(reducedFraction.d)
  if (decimals !== undefined)
    return { digits: trimZeros(formatExact(reducedFraction, decimals)), terminates: true }
  const size = String(reducedFraction.n / reducedFraction.d).replace('-', '')
  let places = size === '0' ? MAX_DIGITS : MAX_DIGITS - size.length
  // below one, the zeros after the point are not significant
  while (size === '0' && countDigits(reducedFraction, places) < MAX_DIGITS) places += 1
  return { digits: trimZeros(formatExact(reducedFraction, places)), terminates: false }
}

function countDigits(value: Exact, places: number): number {
  return formatExact(multiply(value, powerOfTen(places)), 0).replace('-', '').length
}

/** Counts the decimals of a reduced fraction; undefined if they never end. */
function countFractionDecimals(denominator: bigint): number | undefined {
  let remaining = denominator
  let factorsOfTwo = 0
  let factorsOfFive = 0
  for (; remaining % 2n === 0n; remaining /= 2n) factorsOfTwo += 1
  for (; remaining % 5n === 0n; remaining /= 5n) factorsOfFive += 1
  return remaining === 1n ? Math.max(factorsOfTwo, factorsOfFive) : undefined
}

function trimZeros(text: string): string {
  return text.includes('.') ? text.replace(/\.?0+$/, '') : text
}
