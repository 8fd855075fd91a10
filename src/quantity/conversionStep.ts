import { commonFactor, type Exact, exactOfDouble, minus } from './exact.js'
import { nearestDouble } from './nearestDouble.js'
import type { Unit } from './unit.js'
import { unitPair } from './unitPair.js'

/** One pair of units, made ready for double arithmetic: to = from × (`high` + `low`) + (`offsetHigh` + `offsetLow`). */
export interface ConversionStep {
  readonly from: Unit
  readonly to: Unit
  readonly linear: boolean
  readonly high: number
  readonly low: number
  /** `high` in two halves of 26 bits, whose products with another half lose nothing. */
  readonly highTop: number
  readonly highTail: number
  readonly offsetHigh: number
  readonly offsetLow: number
  /** Where the inverse ratio is a double, one division is already the nearest answer; else 0. */
  readonly divisor: number
  /** to = (from × `times` + `added`) / `over` in small whole numbers, where they exist; else `times` is 0. */
  readonly times: number
  readonly added: number
  readonly over: number
}

/** 2^27 + 1: its product with a double parts that in two halves of 26 bits. */
export const SPLIT = 134217729

/** More than the sum of all roundings of a conversion: a share of the product. */
export const DOUBT = 3.944304526105059e-31 // 2 ** -101: a power is kept by bundlers that drop a number

/** Whole numbers below 2^26: their products with a half of a double are exact. */
const SMALL = 67108864n

export function makeConversionStep(from: Unit, to: Unit): ConversionStep {
  const { ratio, offset } = unitPair(from, to)
  const high = nearestDouble(ratio)
  const low = nearestDouble(minus(ratio, exactOfDouble(high)))
  const offsetHigh = nearestDouble(offset)
  const offsetLow = nearestDouble(minus(offset, exactOfDouble(offsetHigh)))
  const inverse = nearestDouble({ n: ratio.d, d: ratio.n })
  const linear = offset.n === 0n
  const spread = SPLIT * high
  const highTop = spread - (spread - high)
  return {
    from,
    to,
    linear,
    high,
    low,
    highTop,
    highTail: high - highTop,
    offsetHigh,
    offsetLow,
    divisor: linear && isExactly(inverse, { n: ratio.d, d: ratio.n }) ? inverse : 0,
    ...smallNumbers(ratio, offset),
  }
}

function isExactly(value: number, exact: Exact): boolean {
  const own = exactOfDouble(value)
  return own.n * exact.d === exact.n * own.d
}

function smallNumbers(ratio: Exact, offset: Exact): { times: number; added: number; over: number } {
  const n = ratio.n * offset.d
  const c = offset.n * ratio.d
  const d = ratio.d * offset.d
  const common = commonFactor(commonFactor(n, c < 0n ? -c : c), d)
  const over = d / common
  const times = n / common
  const added = c / common
  if (times >= SMALL || over >= SMALL || added >= SMALL || added <= -SMALL)
    return { times: 0, added: 0, over: 1 }
  return { times: Number(times), added: Number(added), over: Number(over) }
}
