import { quoteValue } from '../base/index.js'
import { type ConversionStep, DOUBT, SPLIT } from './conversionStep.js'
import { convertValue } from './convertValue.js'
import { stepBetween } from './stepBetween.js'
import type { Unit } from './unit.js'

const MIN_SAFE = 9.313225746154785e-10 // 2 ** -30
const MAX_SAFE = 1.2089258196146292e24 // 2 ** 80
/** A quotient is off by less than this share of itself, unless the sum before it has cancelled. */
const SMALL_SHARE = 1.7763568394002505e-15 // 2 ** -49

/**
 * A whole column of measured values in another unit, for logs and fleets. Single values: {@link convert}.
 *
 * Each value to = from × ratio (temperatures: × ratio + offset), rounded once.
 *
 * @param values - finite numbers in the unit `from`, each taken at its exact binary value; not changed
 * @param from - a unit id
 * @param to - a unit of the same measure
 * @returns a new column; every value equal to what `convert` gives
 * @throws TypeError when `values` is not a Float64Array, for an unknown unit or another measure
 * @throws RangeError for NaN, infinities and results outside the normal doubles, naming the first such place
 *
 * Source: the same factors as `convert`.
 *
 * @example
 * ```ts
 * import { convertColumn } from 'drivetrain-service/v1/quantity'
 * // What are 9 and 39 N·m in lbf·ft?
 * Array.from(convertColumn(new Float64Array([9, 39]), 'N.m', 'lbf.ft')) // => [6.638059343495388, 28.764923821813348]
 * ```
 */
export function convertColumn(values: Float64Array, from: Unit, to: Unit): Float64Array {
  if (!(values instanceof Float64Array))
    throw new TypeError(`values must be a Float64Array, got ${quoteValue(values)}`)
  const step = stepBetween(from, to)
  const column = new Float64Array(values.length)
  if (step.linear && step.low !== 0 && step.divisor === 0) convertProducts(values, step, column)
  else if (!step.linear && step.times !== 0) convertSums(values, step, column)
  else convertEach(values, step, column)
  return column
}

function convertEach(values: Float64Array, step: ConversionStep, column: Float64Array): void {
  for (let at = 0; at < values.length; at++) column[at] = oneValue(values, at, step)
}

/** The fast path of `convertValue`, without a call for each value. */
function convertProducts(values: Float64Array, step: ConversionStep, column: Float64Array): void {
  const { high, low, highTop, highTail } = step
  for (let at = 0; at < values.length; at++) {
    const value = values[at] as number
    const product = value * high
    const spread = SPLIT * value
    const top = spread - (spread - value)
    const tail = value - top
    const rest = top * highTop - product + top * highTail + tail * highTop + tail * highTail + value * low
    const doubt = product * DOUBT
    const lower = product + (rest - doubt)
    const size = lower < 0 ? -lower : lower
    // NaN and infinities, tiny and huge values fail this, and are looked at one by one
    if (lower === product + (rest + doubt) && size > 1e-240 && size < 1e270) column[at] = lower
    else column[at] = oneValue(values, at, step)
  }
}

/**
 * Temperatures: (value × times + added) / over in whole numbers, as a quotient and what it leaves. Between `MIN_SAFE` and
 * `MAX_SAFE` every part but the two divisions and the last sum is exact, so that exact ties fall to the even double; where
 * the sum cancels nearly all of itself, the second look decides.
 */
function convertSums(values: Float64Array, step: ConversionStep, column: Float64Array): void {
  const { times, added, over } = step
  for (let at = 0; at < values.length; at++) {
    const value = values[at] as number
    const size = value < 0 ? -value : value
    const product = value * times
    const spread = SPLIT * value
    const top = spread - (spread - value)
    const sum = product + added
    const part = sum - product
    const rest = product - (sum - part) + (added - part) + (top * times - product + (value - top) * times)
    const first = sum / over
    const width = SPLIT * first
    const head = width - (width - first)
    const second = (sum - head * over - (first - head) * over + rest) / over
    const limit = first * SMALL_SHARE
    if (second * second <= limit * limit && ((size > MIN_SAFE && size < MAX_SAFE) || size === 0))
      column[at] = first + second
    else column[at] = oneValue(values, at, step)
  }
}

function oneValue(values: Float64Array, at: number, step: ConversionStep): number {
  const value = values[at] as number
  if (!Number.isFinite(value)) throw new RangeError(`values[${at}] must be finite, got ${value}`)
  return convertValue(value, step)
}
