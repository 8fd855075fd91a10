import { quoteValue } from '../base/index.js'
import { type ConversionStep, ERROR_BOUND, findConversionStep, SPLIT_FACTOR } from './conversionStep.js'
import { convertValue } from './convertValue.js'
import type { Unit } from './unit.js'

const MIN_EXACT_SIZE = 9.313225746154785e-10 // 2 ** -30
const MAX_EXACT_SIZE = 1.2089258196146292e24 // 2 ** 80
/** Bounds the relative error of a quotient, unless its sum has almost cancelled. */
const MAX_QUOTIENT_ERROR = 1.7763568394002505e-15 // 2 ** -49

/**
 * Converts a column of measured values to another unit, for logs and fleets. For single values, use
 * {@link convert}.
 *
 * Each value to = from × ratio (temperatures: × ratio + offset), rounded once.
 *
 * @param values - finite numbers in the unit `from`, each used at its exact binary value; not changed
 * @param from - a unit id
 * @param to - a unit of the same measure
 * @returns a new column with the values that `convert` gives
 * @throws TypeError if `values` is not a Float64Array, a unit is unknown, or the units are of different measures
 * @throws RangeError for NaN, infinities and results outside the normal doubles, naming the first such index
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
  const step = findConversionStep(from, to)
  const column = new Float64Array(values.length)
  if (step.isLinear && step.ratioLow !== 0 && step.divisor === 0) convertProducts(values, step, column)
  else if (!step.isLinear && step.numerator !== 0) convertSums(values, step, column)
  else convertEach(values, step, column)
  return column
}

function convertEach(values: Float64Array, step: ConversionStep, column: Float64Array): void {
  for (let at = 0; at < values.length; at++) column[at] = convertOne(values, at, step)
}

/** The fast path of `convertValue`, without a call for each value. */
function convertProducts(values: Float64Array, step: ConversionStep, column: Float64Array): void {
  const { ratioHigh, ratioLow, ratioTop, ratioTail } = step
  for (let at = 0; at < values.length; at++) {
    const value = values[at] as number
    const product = value * ratioHigh
    const scaled = SPLIT_FACTOR * value
    const top = scaled - (scaled - value)
    const tail = value - top
    const correction =
      top * ratioTop - product + top * ratioTail + tail * ratioTop + tail * ratioTail + value * ratioLow
    const bound = product * ERROR_BOUND
    const result = product + (correction - bound)
    const size = result < 0 ? -result : result
    // NaN, infinities, tiny and huge values fail this test and are converted one by one
    if (result === product + (correction + bound) && size > 1e-240 && size < 1e270) column[at] = result
    else column[at] = convertOne(values, at, step)
  }
}

/**
 * Temperatures: (value × numerator + addend) / denominator, as a quotient and its correction. From `MIN_EXACT_SIZE`
 * to `MAX_EXACT_SIZE`, every operation except the two divisions and the last sum is exact, so that ties go to the
 * even double. If the sum almost cancels, `convertValue` does the conversion.
 */
function convertSums(values: Float64Array, step: ConversionStep, column: Float64Array): void {
  const { numerator, addend, denominator } = step
  for (let at = 0; at < values.length; at++) {
    const value = values[at] as number
    const size = value < 0 ? -value : value
    const product = value * numerator
    const scaled = SPLIT_FACTOR * value
    const top = scaled - (scaled - value)
    const sum = product + addend
    const part = sum - product
    const error =
      product - (sum - part) + (addend - part) + (top * numerator - product + (value - top) * numerator)
    const quotient = sum / denominator
    const scaledQuotient = SPLIT_FACTOR * quotient
    const head = scaledQuotient - (scaledQuotient - quotient)
    const correction = (sum - head * denominator - (quotient - head) * denominator + error) / denominator
    const limit = quotient * MAX_QUOTIENT_ERROR
    if (
      correction * correction <= limit * limit &&
      ((size > MIN_EXACT_SIZE && size < MAX_EXACT_SIZE) || size === 0)
    )
      column[at] = quotient + correction
    else column[at] = convertOne(values, at, step)
  }
}

function convertOne(values: Float64Array, at: number, step: ConversionStep): number {
  const value = values[at] as number
  if (!Number.isFinite(value)) throw new RangeError(`values[${at}] must be finite, got ${value}`)
  return convertValue(value, step)
}
