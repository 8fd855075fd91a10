import { type ConversionStep, SPLIT_FACTOR } from './conversionStep.js'

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
