import { type ConversionStep, ERROR_BOUND, SPLIT_FACTOR } from './conversionStep.js'
import { convertExactly } from './convertExactly.js'

const MIN_NORMAL = 2.2250738585072014e-308 // 2 ** -1022

/** Converts a finite value to the nearest double; throws RangeError if a double cannot hold the result. */
export function convertValue(value: number, step: ConversionStep): number {
  if (step.ratioLow === 0 && step.isLinear) return requireNormalDouble(value * step.ratioHigh, value, step)
  if (step.divisor !== 0) return requireNormalDouble(value / step.divisor, value, step)
  const size = Math.abs(value)
  if (size < 1e280 && (size > 1e-250 || !step.isLinear)) {
    // the product and its rounding error, both as doubles
    const product = value * step.ratioHigh
    const scaled = SPLIT_FACTOR * value
    const top = scaled - (scaled - value)
    const tail = value - top
    const error =
      top * step.ratioTop - product + top * step.ratioTail + tail * step.ratioTop + tail * step.ratioTail
    if (step.isLinear) {
      const correction = error + value * step.ratioLow
      const bound = product * ERROR_BOUND
      const result = product + (correction - bound)
      if (result === product + (correction + bound)) return result
    } else {
      const { offsetHigh, offsetLow } = step
      const sum = product + offsetHigh
      const part = sum - product
      const correction =
        product - (sum - part) + (offsetHigh - part) + (error + value * step.ratioLow + offsetLow)
      const bound = (Math.abs(product) + Math.abs(offsetHigh)) * ERROR_BOUND
      const result = sum + (correction - bound)
      if (result === sum + (correction + bound)) return result
    }
    const quotient = findExactQuotient(value, step)
    if (quotient !== undefined) return quotient
  }
  return value === 0 && step.isLinear
    ? 0
    : requireNormalDouble(convertExactly(value, step.from, step.to), value, step)
}

function requireNormalDouble(result: number, value: number, step: ConversionStep): number {
  const size = Math.abs(result)
  if (size >= MIN_NORMAL && size < Number.POSITIVE_INFINITY) return result
  // any temperature can convert to zero, but a length only if it was zero
  if (size === 0 && (value === 0 || !step.isLinear)) return 0
  if (step.from === step.to) return value
  const problem = size > 1 ? 'too large' : 'too small'
  throw new RangeError(
    `value ${value} ${step.from} is ${problem} for a double in ${step.to}: from 2.2250738585072014e-308 to 1.7976931348623157e308`,
  )
}

/**
 * (value × numerator + addend) / denominator if it is exactly the sum of two doubles, as at every tie (1 in
 * 160 for inches to millimetres). Every step is checked; undefined if it is not proved.
 */
export function findExactQuotient(
  value: number,
  { numerator, addend, denominator }: ConversionStep,
): number | undefined {
  if (numerator === 0) return undefined
  const product = value * numerator
  const sum = product + addend
  const error = findSumError(product, addend, sum) + findProductError(value, numerator, product)
  if (
    findSumError(findSumError(product, addend, sum), findProductError(value, numerator, product), error) !== 0
  )
    return undefined
  const quotient = sum / denominator
  const quotientProduct = quotient * denominator
  const gap = sum - quotientProduct
  const exactGap = gap - findProductError(quotient, denominator, quotientProduct)
  const remainder = exactGap + error
  if (findSumError(gap, -findProductError(quotient, denominator, quotientProduct), exactGap) !== 0)
    return undefined
  if (findSumError(sum, -quotientProduct, gap) !== 0 || findSumError(exactGap, error, remainder) !== 0)
    return undefined
  const correction = remainder / denominator
  const checkProduct = correction * denominator
  if (checkProduct !== remainder || findProductError(correction, denominator, checkProduct) !== 0)
    return undefined
  return quotient + correction
}

/** The exact rounding error of a sum. */
function findSumError(left: number, right: number, sum: number): number {
  const part = sum - left
  return left - (sum - part) + (right - part)
}

/** The exact rounding error of a product with a whole number below 2^26. */
function findProductError(value: number, whole: number, product: number): number {
  const scaled = SPLIT_FACTOR * value
  const top = scaled - (scaled - value)
  return top * whole - product + (value - top) * whole
}
