import { commonFactor, type Exact, exactText, powerOfTen, times } from './exact.js'
import { figureOf } from './figureOf.js'
import type { Figure, Unit } from './unit.js'
import { exactlyIn } from './unitPair.js'

/** The exact digits of a converted figure. */
export interface ConvertedFigure {
  /** All digits where they end; else the first 34 significant ones, the last rounded to nearest. */
  readonly digits: string
  readonly terminates: boolean
}

const SIGNIFICANT = 34

/**
 * All digits of a printed figure in another unit, to check a conversion by hand. What to print next to the
 * manual's figure is {@link secondUnit}.
 *
 * to = from × ratio (temperatures: × ratio + offset), in exact fractions.
 */
export function convertFigure(figure: Figure, from: Unit, to: Unit): ConvertedFigure {
  const value = exactlyIn(figureOf(figure), from, to)
  const common = commonFactor(value.n < 0n ? -value.n : value.n, value.d)
  const reduced = { n: value.n / common, d: value.d / common }
  const decimals = decimalsToEnd(reduced.d)
  if (decimals !== undefined) return { digits: trimmed(exactText(reduced, decimals)), terminates: true }
  const size = String(reduced.n / reduced.d).replace('-', '')
  let places = size === '0' ? SIGNIFICANT : SIGNIFICANT - size.length
  // below one: as many places more as there are zeros behind the point
  while (size === '0' && digitCount(reduced, places) < SIGNIFICANT) places += 1
  return { digits: trimmed(exactText(reduced, places)), terminates: false }
}

function digitCount(value: Exact, places: number): number {
  return exactText(times(value, powerOfTen(places)), 0).replace('-', '').length
}

/** How many decimals a reduced fraction has; undefined where they never end. */
function decimalsToEnd(denominator: bigint): number | undefined {
  let rest = denominator
  let twos = 0
  let fives = 0
  for (; rest % 2n === 0n; rest /= 2n) twos += 1
  for (; rest % 5n === 0n; rest /= 5n) fives += 1
  return rest === 1n ? Math.max(twos, fives) : undefined
}

function trimmed(text: string): string {
  return text.includes('.') ? text.replace(/\.?0+$/, '') : text
}
