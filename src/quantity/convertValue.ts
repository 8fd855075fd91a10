import { type ConversionStep, DOUBT, SPLIT } from './conversionStep.js'
import { convertExactly } from './convertExactly.js'
import { exactQuotient } from './exactQuotient.js'

const SMALLEST_NORMAL = 2.2250738585072014e-308 // 2 ** -1022

/** The nearest double, for a finite value; throws RangeError where a double cannot hold the result. */
export function convertValue(value: number, step: ConversionStep): number {
  if (step.low === 0 && step.linear) return inRange(value * step.high, value, step)
  if (step.divisor !== 0) return inRange(value / step.divisor, value, step)
  const size = Math.abs(value)
  if (size < 1e280 && (size > 1e-250 || !step.linear)) {
    // the product and its rounding error, both as doubles
    const product = value * step.high
    const spread = SPLIT * value
    const top = spread - (spread - value)
    const tail = value - top
    const error =
      top * step.highTop - product + top * step.highTail + tail * step.highTop + tail * step.highTail
    if (step.linear) {
      const rest = error + value * step.low
      const doubt = product * DOUBT
      const lower = product + (rest - doubt)
      if (lower === product + (rest + doubt)) return lower
    } else {
      const { offsetHigh, offsetLow } = step
      const sum = product + offsetHigh
      const part = sum - product
      const rest = product - (sum - part) + (offsetHigh - part) + (error + value * step.low + offsetLow)
      const doubt = (Math.abs(product) + Math.abs(offsetHigh)) * DOUBT
      const lower = sum + (rest - doubt)
      if (lower === sum + (rest + doubt)) return lower
    }
    const quotient = exactQuotient(value, step)
    if (quotient !== undefined) return quotient
  }
  return value === 0 && step.linear ? 0 : inRange(convertExactly(value, step.from, step.to), value, step)
}

function inRange(result: number, value: number, step: ConversionStep): number {
  const size = Math.abs(result)
  if (size >= SMALLEST_NORMAL && size < Number.POSITIVE_INFINITY) return result
  // a temperature may come to zero from anywhere, a length only from zero
  if (size === 0 && (value === 0 || !step.linear)) return 0
  if (step.from === step.to) return value
  const trouble = size > 1 ? 'too large' : 'too small'
  throw new RangeError(
    `value ${value} ${step.from} is ${trouble} for a double in ${step.to}: from 2.2250738585072014e-308 to 1.7976931348623157e308`,
  )
}
