import type { Exact } from './exact.js'
import { add, compareExact, exactOf, formatExact, multiply, powerOfTen, subtract } from './exact.js'
import { countDecimals, isFigure, requireFigure } from './figure.js'
import { findUnitPair, type UnitPair } from './findUnitPair.js'
import { requireBand } from './requireQuantity.js'
import type { Figure, PrintedBand, Unit } from './unit.js'

const MAX_DECIMALS = 6

/**
 * Calculates the figure to print in a second unit next to a manual's figure, for cards and lists. To calculate, use
 * {@link convert}.
 *
 * The last place is 10^−k, nearest in ratio to the converted last place of the manual's figure, with k from 0
 * to 6 and at least two significant digits; a nominal is rounded to the nearest (even on a tie), **limits
 * inward**, with digits added until the band is not empty. The converted band is always inside the manual's.
 *
 * @param value - the printed nominal, nominal with tolerance, or limits
 * @param unit - a unit of the same measure
 * @returns figures of the same kind (limits, if no nominal keeps a one-sided tolerance inside), or `null` if no
 *   figure of at most 9 whole digits and 6 decimals lies inside the band
 * @throws TypeError for a value that is not a printed band, an unknown unit or another measure
 *
 * Source: NIST SP 811 (2008), appendix B.7.2, whose examples this rule reproduces. Ties by ASTM E29. Limits inward
 * by ASME A112.18.1, annex A.2 e). House rule: at least two digits, and whole numbers keep their zeros, since a
 * printed `3800` does not show how many of them are significant.
 *
 * @example
 * ```ts
 * import { secondUnit } from 'drivetrain-service/v1/quantity'
 * // Which whole lbf·ft lie inside 30–36 N·m (22.13–26.55 lbf·ft)?
 * secondUnit({ kind: 'limits', min: '30', max: '36', unit: 'N.m' }, 'lbf.ft')
 * // => { kind: 'limits', min: '23', max: '26', unit: 'lbf.ft' }
 * ```
 */
export function secondUnit<U extends Unit>(value: PrintedBand, unit: U): PrintedBand<U> | null {
  requireBand('value', value)
  const pair = findUnitPair(value.unit, unit)
  if (value.kind === 'nominal') return convertNominal(value.value, pair, unit)
  if (value.kind === 'limits') return convertLimits(value.min, value.max, pair, unit)
  return convertTolerance(value, pair, unit)
}

function convertNominal<U extends Unit>(figure: Figure, pair: UnitPair, unit: U): PrintedBand<U> | null {
  const exact = convertWithPair(requireFigure(figure, 'value.value'), pair)
  const text = formatExact(exact, chooseDecimals([figure], pair))
  return isFigure(text, { minus: true }) ? { kind: 'nominal', value: text, unit } : null
}

function convertLimits<U extends Unit>(
  min: Figure | undefined,
  max: Figure | undefined,
  pair: UnitPair,
  unit: U,
): PrintedBand<U> | null {
  const low = min === undefined ? undefined : convertWithPair(requireFigure(min, 'value.min'), pair)
  const high = max === undefined ? undefined : convertWithPair(requireFigure(max, 'value.max'), pair)
  const printed = [min, max].filter((figure) => figure !== undefined)
  return roundLimitsInward(low, high, chooseDecimals(printed, pair), unit)
}

function roundLimitsInward<U extends Unit>(
  low: Exact | undefined,
  high: Exact | undefined,
  minDecimals: number,
  unit: U,
): PrintedBand<U> | null {
  for (let decimals = minDecimals; decimals <= MAX_DECIMALS; decimals++) {
    const minText = low && formatExact(low, decimals, 'up')
    const maxText = high && formatExact(high, decimals, 'down')
    if (minText && maxText && compareExact(exactOf(minText), exactOf(maxText)) > 0) continue
    if (![minText, maxText].every((text) => text === undefined || isFigure(text, { minus: true })))
      return null
    return { kind: 'limits', ...(minText && { min: minText }), ...(maxText && { max: maxText }), unit }
  }
  return null
}

function convertTolerance<U extends Unit>(
  value: Extract<PrintedBand, { kind: 'nominal with tolerance' }>,
  pair: UnitPair,
  unit: U,
): PrintedBand<U> | null {
  const nominal = requireFigure(value.value, 'value.value')
  const below = requireFigure(value.minus, 'value.minus')
  const above = requireFigure(value.plus, 'value.plus')
  const low = convertWithPair(subtract(nominal, below), pair)
  const high = convertWithPair(add(nominal, above), pair)
  const steps = { ratio: pair.ratio, offset: { n: 0n, d: 1n } }
  const minDecimals = Math.max(
    chooseDecimals([value.value, value.minus, value.plus], pair, 1),
    chooseDecimals([value.minus, value.plus], steps),
  )
  for (let decimals = minDecimals; decimals <= MAX_DECIMALS; decimals++) {
    const nominalText = formatExact(convertWithPair(nominal, pair), decimals)
    if (!isFigure(nominalText, { minus: true })) return null
    const minusText = formatExact(subtract(exactOf(nominalText), low), decimals, 'down')
    const plusText = formatExact(subtract(high, exactOf(nominalText)), decimals, 'down')
    if (isFigure(minusText) && isFigure(plusText))
      return { kind: 'nominal with tolerance', value: nominalText, minus: minusText, plus: plusText, unit }
  }
  return roundLimitsInward(low, high, minDecimals, unit)
}

/** Decimals by the rule above for the figures of one value; the first `twoDigitCount` need two digits. */
function chooseDecimals(figures: readonly Figure[], pair: UnitPair, twoDigitCount = figures.length): number {
  const printed = Math.max(...figures.map(countDecimals))
  const last = multiply(pair.ratio, powerOfTen(-printed))
  let decimals = 0
  // 10^−k is nearest in ratio to the converted last place x where x² ≥ 10^(−2k−1)
  while (decimals < MAX_DECIMALS && last.n * last.n * 10n ** BigInt(2 * decimals + 1) < last.d * last.d)
    decimals += 1
  if (pair.offset.n !== 0n) return decimals
  const needed = figures
    .slice(0, twoDigitCount)
    .map((figure) => decimalsForTwoDigits(convertWithPair(requireFigure(figure), pair), decimals))
  return Math.max(...needed)
}

function decimalsForTwoDigits(value: Exact, minDecimals: number): number {
  const size = value.n < 0n ? -value.n : value.n
  let decimals = minDecimals
  while (decimals < MAX_DECIMALS && size * 10n ** BigInt(decimals) < 10n * value.d) {
    // an exact value needs no more zeros
    if ((size * 10n ** BigInt(decimals)) % value.d === 0n) break
    decimals += 1
  }
  return decimals
}

function convertWithPair(value: Exact, { ratio, offset }: UnitPair): Exact {
  return add(multiply(value, ratio), offset)
}
