import { add, compareExact, divide, type Exact, roundExact, subtract } from '../quantity/index.js'

/** A point in time in days of use after the last reading, and the whole day on which it is reached. */
export interface Crossing {
  readonly days: number
  readonly day: number
}

const exactOfInteger = (value: number): Exact => ({ n: BigInt(value), d: 1n })

/** The ratio of two whole numbers. */
export const makeExactRatio = (first: number, second: number): Exact =>
  divide(exactOfInteger(first), exactOfInteger(second))

/** The mean of one or two fractions. */
export function calculateExactMean([first = exactOfInteger(0), second = first]: readonly Exact[]): Exact {
  const sum = add(first, second)
  return { n: sum.n, d: sum.d * 2n }
}

export const toCrossing = (days: number): Crossing => ({ days, day: Math.ceil(days) })

export const exactToCrossing = (days: Exact): Crossing => ({
  days: Number(days.n) / Number(days.d),
  day: Number(roundExact(days, 'up')),
})

/** Finds the exact fraction of a slope between two of the points. */
export function findExactSlope(slope: number, x: readonly number[], y: readonly number[]): Exact {
  for (let i = 0; i < x.length; i++) {
    for (let j = i + 1; j < x.length; j++) {
      const run = (x[j] ?? 0) - (x[i] ?? 0)
      const rise = (y[j] ?? 0) - (y[i] ?? 0)
      if (run !== 0 && rise / run + 0 === slope) return makeExactRatio(rise, run)
    }
  }
  throw new Error(`No two points have the slope ${slope}`)
}

/**
 * The time, in days after day `span`, at which the line with this slope through the median of the points
 * reaches `target`. It is exact: a crossing exactly on a day is not a day late.
 */
export function findLineCrossing(
  slope: Exact,
  x: readonly number[],
  y: readonly number[],
  target: number,
  span: number,
): Crossing {
  const offsets = x.map((at, index) =>
    subtract(exactOfInteger(y[index] ?? 0), { n: slope.n * BigInt(at), d: slope.d }),
  )
  offsets.sort(compareExact)
  const median = calculateExactMean(offsets.slice((offsets.length - 1) >> 1, (offsets.length >> 1) + 1))
  return exactToCrossing(
    subtract(divide(subtract(exactOfInteger(target), median), slope), exactOfInteger(span)),
  )
}
