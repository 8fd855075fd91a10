import type { ConversionStep } from './conversionStep.js'
import { convertValue } from './convertValue.js'
import { exactQuotient } from './exactQuotient.js'
import { shown } from './shown.js'
import { stepBetween } from './stepBetween.js'
import type { Unit } from './unit.js'

const SPLIT = 134217729 // 2^27 + 1
const DOUBT = 2 ** -101

/**
 * A whole column of measured values in another unit, for logs and fleets. Single values: {@link convert}.
 *
 * Each value to = from × ratio (temperatures: × ratio + offset), rounded once.
 *
 * @param values - finite numbers in the unit `from`; not changed
 * @param from - a unit id
 * @param to - a unit of the same measure
 * @returns a new column; every value equal to what `convert` gives
 * @throws TypeError when `values` is no Float64Array, for an unknown unit or another measure
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
  if (!(values instanceof Float64Array)) {
    throw new TypeError(`values must be a Float64Array, got ${shown(values)}`)
  }
  const step = stepBetween(from, to)
  const column = new Float64Array(values.length)
  if (!step.linear) convertSums(values, step, column)
  else if (step.low === 0 || step.divisor !== 0) convertEach(values, step, column)
  else convertProducts(values, step, column)
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
    const least = product + (rest - doubt)
    const size = least < 0 ? -least : least
    // NaN and infinities, tiny and huge values fail this, and are looked at one by one
    if (least === product + (rest + doubt) && size > 1e-240 && size < 1e270) column[at] = least
    else column[at] = oneValue(values, at, step)
  }
}

/** The same with an offset. */
function convertSums(values: Float64Array, step: ConversionStep, column: Float64Array): void {
  const { high, low, highTop, highTail, offsetHigh, offsetLow } = step
  const offsetDoubt = Math.abs(offsetHigh) * DOUBT
  for (let at = 0; at < values.length; at++) {
    const value = values[at] as number
    const product = value * high
    const spread = SPLIT * value
    const top = spread - (spread - value)
    const tail = value - top
    const error = top * highTop - product + top * highTail + tail * highTop + tail * highTail
    const sum = product + offsetHigh
    const part = sum - product
    const rest = product - (sum - part) + (offsetHigh - part) + (error + value * low + offsetLow)
    const doubt = (product < 0 ? -product : product) * DOUBT + offsetDoubt
    const least = sum + (rest - doubt)
    if (least < 1e270 && least > -1e270) {
      // one value in ten is an exact tie of two doubles: settled here, without a second look at the sum
      const settled = least === sum + (rest + doubt) ? least : exactQuotient(value, step)
      column[at] = settled === undefined ? oneValue(values, at, step) : settled
    } else column[at] = oneValue(values, at, step)
  }
}

function oneValue(values: Float64Array, at: number, step: ConversionStep): number {
  const value = values[at] as number
  if (!Number.isFinite(value)) throw new RangeError(`values[${at}] must be finite, got ${value}`)
  return convertValue(value, step)
}
