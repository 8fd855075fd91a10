import { type Exact, exactOfDouble, findNearestDouble, greatestCommonDivisor, subtract } from './exact.js'
import { findUnitPair } from './findUnitPair.js'
import type { Unit } from './unit.js'

/** A pair of units prepared for double arithmetic: to = from × (`ratioHigh` + `ratioLow`) + (`offsetHigh` + `offsetLow`). */
export interface ConversionStep {
  readonly from: Unit
  readonly to: Unit
  readonly isLinear: boolean
  readonly ratioHigh: number
  readonly ratioLow: number
  /** `ratioHigh` split into two halves of 26 bits: the product of two halves is exact. */
  readonly ratioTop: number
  readonly ratioTail: number
  readonly offsetHigh: number
  readonly offsetLow: number
  /**
   * The inverse ratio if it is exactly a double: one division then gives the nearest double. Otherwise 0.
   */
  readonly divisor: number
  /** to = (from × `numerator` + `addend`) / `denominator` in whole numbers below 2^26; `numerator` is 0 if there are none. */
  readonly numerator: number
  readonly addend: number
  readonly denominator: number
}

/** 2^27 + 1: multiplying by it splits a double into two halves of 26 bits. */
export const SPLIT_FACTOR = 134217729

/** Bounds the sum of all rounding errors of a conversion, as a share of the product. */
export const ERROR_BOUND = 3.944304526105059e-31 // 2 ** -101: a power is kept by bundlers that drop a number

/** Products of smaller whole numbers with half a double are exact. */
const MAX_FACTOR = 67108864n

export function makeConversionStep(from: Unit, to: Unit): ConversionStep {
  const { ratio, offset } = findUnitPair(from, to)
  const ratioHigh = findNearestDouble(ratio)
  const ratioLow = findNearestDouble(subtract(ratio, exactOfDouble(ratioHigh)))
  const offsetHigh = findNearestDouble(offset)
  const offsetLow = findNearestDouble(subtract(offset, exactOfDouble(offsetHigh)))
  const inverseRatio = findNearestDouble({ n: ratio.d, d: ratio.n })
  const isLinear = offset.n === 0n
  const scaled = SPLIT_FACTOR * ratioHigh
  const ratioTop = scaled - (scaled - ratioHigh)
  return {
    from,
    to,
    isLinear,
    ratioHigh,
    ratioLow,
    ratioTop,
    ratioTail: ratioHigh - ratioTop,
    offsetHigh,
    offsetLow,
    divisor: isLinear && isExactDouble(inverseRatio, { n: ratio.d, d: ratio.n }) ? inverseRatio : 0,
    ...findWholeFactors(ratio, offset),
  }
}

function isExactDouble(value: number, exact: Exact): boolean {
  const exactValue = exactOfDouble(value)
  return exactValue.n * exact.d === exact.n * exactValue.d
}

function findWholeFactors(
  ratio: Exact,
  offset: Exact,
): { numerator: number; addend: number; denominator: number } {
  const n = ratio.n * offset.d
  const c = offset.n * ratio.d
  const d = ratio.d * offset.d
  const commonDivisor = greatestCommonDivisor(greatestCommonDivisor(n, c < 0n ? -c : c), d)
  const denominator = d / commonDivisor
  const numerator = n / commonDivisor
  const addend = c / commonDivisor
  if (numerator >= MAX_FACTOR || denominator >= MAX_FACTOR || addend >= MAX_FACTOR || addend <= -MAX_FACTOR)
    return { numerator: 0, addend: 0, denominator: 1 }
  return { numerator: Number(numerator), addend: Number(addend), denominator: Number(denominator) }
}

const steps = /* @__PURE__ */ new Map<string, Map<string, ConversionStep>>()

/** The conversion step between two units, made once for each pair. */
export function findConversionStep(from: Unit, to: Unit): ConversionStep {
  const known = steps.get(from)?.get(to)
  return known ?? cacheStep(from, to)
}

function cacheStep(from: Unit, to: Unit): ConversionStep {
  const step = makeConversionStep(from, to)
  const row = steps.get(from)
  if (row) row.set(to, step)
  else steps.set(from, new Map([[to, step]]))
  return step
}
