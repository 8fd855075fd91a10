import { refuse } from '../base/index.js'

/** A line through readings, with confidence limits of its slope. */
export interface TheilSenFit {
  readonly slope: number
  readonly lowSlope: number
  readonly highSlope: number
  /** The one or two middle slopes; `slope` is their mean. */
  readonly middle: readonly number[]
  /** Median of y − slope·x. */
  readonly intercept: number
}

/**
 * The median of the slopes of all pairs with its confidence limits: the slopes at ranks (N ∓
 * z·√(n(n−1)(2n+5)/18 − ties))/2. A quarter of the readings may be outliers. Undefined if all `x` are equal.
 * Source: P. K. Sen, JASA 63 (1968).
 */
export function fitTheilSen(
  x: readonly number[],
  y: readonly number[],
  confidence: number,
): TheilSenFit | undefined {
  requireNumbers(x, 'x')
  requireNumbers(y, 'y')
  if (x.length !== y.length)
    throw new RangeError(`x and y must have the same length, got ${x.length} and ${y.length}`)
  requireConfidence('confidence', confidence)
  const count = x.length
  const slopes: number[] = []
  for (let i = 0; i < count; i++) {
    for (let j = i + 1; j < count; j++) {
      const run = (x[j] ?? 0) - (x[i] ?? 0)
      // Adding 0 turns −0 into 0.
      if (run !== 0) slopes.push(((y[j] ?? 0) - (y[i] ?? 0)) / run + 0)
    }
  }
  if (slopes.length === 0) return undefined
  const sorted = Float64Array.from(slopes).sort()
  const variance =
    (count * (count - 1) * (2 * count + 5) - calculateTieVariance(x) - calculateTieVariance(y)) / 18
  const spread = calculateNormalDeviate(confidence) * Math.sqrt(variance)
  const lowRank = Math.max(Math.round((sorted.length - spread) / 2) - 1, 0)
  const highRank = Math.min(Math.round((sorted.length + spread) / 2), sorted.length - 1)
  const slope = findMedian(sorted)
  const intercept = findMedian(Float64Array.from(y, (value, index) => value - slope * (x[index] ?? 0)).sort())
  return {
    slope,
    lowSlope: sorted[lowRank] ?? slope,
    highSlope: sorted[highRank] ?? slope,
    middle: [...sorted.subarray((sorted.length - 1) >> 1, (sorted.length >> 1) + 1)],
    intercept,
  }
}

/** Throws if a confidence is not between 0 and 1. */
export function requireConfidence(name: string, confidence: number): void {
  if (typeof confidence !== 'number' || !(confidence > 0 && confidence < 1))
    throw refuse(name, confidence, 'a number above 0 and below 1', 'number')
}

function requireNumbers(list: readonly number[], name: string): void {
  if (!Array.isArray(list)) throw refuse(name, list, 'a list of numbers')
  for (const [index, value] of list.entries())
    if (!Number.isFinite(value)) throw refuse(`${name}[${index}]`, value, 'a finite number', 'number')
}

/** Median of sorted numbers. */
function findMedian(sorted: Float64Array): number {
  const middle = sorted.length >> 1
  const upperMiddle = sorted[middle] ?? 0
  return sorted.length % 2 === 1 ? upperMiddle : ((sorted[middle - 1] ?? 0) + upperMiddle) / 2
}

/** The part of the variance that equal values remove: t(t − 1)(2t + 5) for each group of t. */
function calculateTieVariance(values: readonly number[]): number {
  const sorted = Float64Array.from(values).sort()
  let sum = 0
  let group = 1
  for (let at = 1; at <= sorted.length; at++) {
    if (sorted[at] === sorted[at - 1]) group += 1
    else {
      sum += group * (group - 1) * (2 * group + 5)
      group = 1
    }
  }
  return sum
}

/**
 * The z for which ±z covers this share of the normal distribution; 14 digits for z below 5. Newton's method
 * from the start value of Abramowitz and Stegun 26.2.23; the area is the series z + z³/3 + z⁵/15 + … times
 * the density (both from memory; a test compares it with erf).
 */
export function calculateNormalDeviate(confidence: number): number {
  const t = Math.sqrt(-2 * Math.log((1 - confidence) / 2))
  let z =
    t -
    (2.515517 + 0.802853 * t + 0.010328 * t * t) / (1 + 1.432788 * t + 0.189269 * t * t + 0.001308 * t ** 3)
  // Above 5 the tail is lost in the last digits of the area; the start value's error of 4.5e-4 remains.
  for (let step = 0; step < 4 && z < 5; step++) {
    const density = Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI)
    let area = z
    for (let term = z, divisor = 3; term > area * 1e-17; divisor += 2) {
      term *= (z * z) / divisor
      area += term
    }
    z -= area - confidence / (2 * density)
  }
  return z
}
