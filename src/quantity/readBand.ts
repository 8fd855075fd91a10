import { add, compareExact, divide, type Exact, exactOf, multiply, powerOfTen, subtract } from './exact.js'
import { countDecimals } from './figure.js'
import { convertExact } from './findUnitPair.js'
import { findDifferenceUnit } from './measureOf.js'
import type { PrintedBand, Unit } from './unit.js'

/**
 * The exact band of a printed value in one unit, and its aim. `basis` is the source of the ends: two printed limits (the aim
 * is their middle), one limit (the other end is open), a printed tolerance, the caller's tolerance, or the nominal alone,
 * which has no ends.
 */
export type Band =
  | ClosedBand
  | { readonly basis: 'one limit'; readonly low?: Exact; readonly high?: Exact; readonly aim?: undefined }
  | {
      readonly basis: 'nominal'
      readonly aim: Exact
      /**
       * Half a unit of the last printed digit: a value within this distance of the printed one equals it.
       */
      readonly rounding: Exact
      readonly low?: undefined
      readonly high?: undefined
    }

/** A band with both ends. */
interface ClosedBand {
  readonly basis: 'limits' | 'tolerance' | 'caller'
  readonly low: Exact
  readonly aim: Exact
  readonly high: Exact
}

const TWO: Exact = { n: 2n, d: 1n }

/**
 * Reads a printed value as a band in `unit`. Only the first printed figures are used, not those in other
 * units next to them. The caller's tolerance applies only to a nominal without a printed one.
 */
export function readBand(value: PrintedBand, unit: Unit, tolerancePercent?: number): Band {
  const band = readBandAsPrinted(value, tolerancePercent)
  const { low, aim, high } = band
  const toExactEnd = (end: Exact) => convertExact(end, value.unit, unit)
  return {
    ...band,
    ...(low && { low: toExactEnd(low) }),
    ...(aim && { aim: toExactEnd(aim) }),
    ...(high && { high: toExactEnd(high) }),
    ...('rounding' in band && {
      rounding: convertExact(band.rounding, findDifferenceUnit(value.unit), findDifferenceUnit(unit)),
    }),
  } as Band
}

/** The band of {@link readBand} in the unit of the value. */
export function readBandAsPrinted(value: PrintedBand, tolerancePercent?: number): Band {
  if (value.kind === 'limits') {
    const { min, max } = value
    if (min === undefined && max === undefined)
      throw new TypeError('a printed value of kind limits must state at least one of min and max')
    if (min === undefined) return { basis: 'one limit', high: exactOf(max as string) }
    const low = exactOf(min)
    if (max === undefined) return { basis: 'one limit', low }
    const high = exactOf(max)
    return { basis: 'limits', low, aim: divide(add(low, high), TWO), high }
  }
  const aim = exactOf(value.value)
  const makeBandAround = (basis: 'tolerance' | 'caller', below: Exact, above = below): Band => ({
    basis,
    low: subtract(aim, below),
    aim,
    high: add(aim, above),
  })
  if (value.kind === 'nominal with tolerance')
    return makeBandAround('tolerance', exactOf(value.minus), exactOf(value.plus))
  if (tolerancePercent !== undefined)
    return makeBandAround('caller', divide(multiply(aim, exactOf(tolerancePercent)), exactOf(100)))
  return { basis: 'nominal', aim, rounding: divide(powerOfTen(-countDecimals(value.value)), TWO) }
}

/** Whether an exact value is below (−1), inside (0) or above (1) a band; the ends are inside. */
export function chooseSide(
  value: Exact,
  { low, high }: { readonly low?: Exact | undefined; readonly high?: Exact | undefined },
): -1 | 0 | 1 {
  if (low !== undefined && compareExact(value, low) < 0) return -1
  return high !== undefined && compareExact(value, high) > 0 ? 1 : 0
}

/**
 * The lowest and highest amount in a printed value: its limits, otherwise the nominal. A tolerance is not part of the
 * amount: it is for the work.
 */
export function getStatedEnds(band: Band): { readonly low: Exact; readonly high: Exact } {
  if (band.basis === 'limits') return { low: band.low, high: band.high }
  const only = chooseSingleFigure(band)
  return { low: only, high: only }
}

/** The figure for comparing a printed value: its aim, or its only limit. */
export function chooseSingleFigure({ aim, low, high }: Band): Exact {
  return (aim ?? low ?? high) as Exact
}
