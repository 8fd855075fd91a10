import { type ConversionStep, SPLIT } from './conversionStep.js'

/**
 * (value × times + added) / over where that ends within two doubles, as it does on every exact tie between two
 * doubles (1 in 160 for inches to millimetres); each part is checked, and `undefined` means not proved.
 */
export function exactQuotient(value: number, { times, added, over }: ConversionStep): number | undefined {
  if (times === 0) return undefined
  const product = value * times
  const sum = product + added
  const rest = sumError(product, added, sum) + productError(value, times, product)
  if (sumError(sumError(product, added, sum), productError(value, times, product), rest) !== 0)
    return undefined
  const first = sum / over
  const back = first * over
  const gap = sum - back
  const left = gap - productError(first, over, back)
  const remainder = left + rest
  if (sumError(gap, -productError(first, over, back), left) !== 0) return undefined
  if (sumError(sum, -back, gap) !== 0 || sumError(left, rest, remainder) !== 0) return undefined
  const second = remainder / over
  const again = second * over
  if (again !== remainder || productError(second, over, again) !== 0) return undefined
  return first + second
}

/** What a rounded sum left out, exactly. */
function sumError(left: number, right: number, sum: number): number {
  const part = sum - left
  return left - (sum - part) + (right - part)
}

/** What a rounded product with a whole number below 2^26 left out, exactly. */
function productError(value: number, whole: number, product: number): number {
  const spread = SPLIT * value
  const top = spread - (spread - value)
  return top * whole - product + (value - top) * whole
}
