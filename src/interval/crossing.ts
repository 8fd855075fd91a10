import { compareExact, type Exact, minus, over, plus, roundExact } from '../quantity/index.js'

/** A point in time in days of use after the last reading, and the whole day on which it is reached. */
export interface Crossing {
  readonly days: number
  readonly day: number
}

const whole = (value: number): Exact => ({ n: BigInt(value), d: 1n })

/** The ratio of two whole numbers. */
export const exactRatio = (first: number, second: number): Exact => over(whole(first), whole(second))

/** The mean of one or two fractions. */
export function exactMean([first = whole(0), second = first]: readonly Exact[]): Exact {
  const sum = plus(first, second)
  return { n: sum.n, d: sum.d * 2n }
}

export const crossingOf = (days: number): Crossing => ({ days, day: Math.ceil(days) })

export const exactCrossing = (days: Exact): Crossing => ({
  days: Number(days.n) / Number(days.d),
  day: Number(roundExact(days, 'up')),
})

/** A slope between two of the points as an exact fraction. */
export function exactSlope(slope: number, x: readonly number[], y: readonly number[]): Exact {
  for (let i = 0; i < x.length; i++) {
    for (let j = i + 1; j < x.length; j++) {
      const run = (x[j] ?? 0) - (x[i] ?? 0)
      const rise = (y[j] ?? 0) - (y[i] ?? 0)
      if (run !== 0 && rise / run + 0 === slope) return exactRatio(rise, run)
    }
  }
  throw new Error(`No two points have the slope ${slope}`)
}

/**
 * When the line of this slope through the median of the points reaches `target`, in days after day `span`. It is exact, so
 * that a point which falls exactly on a day is not a day late.
 */
export function lineCrossing(
  slope: Exact,
  x: readonly number[],
  y: readonly number[],
  target: number,
  span: number,
): Crossing {
  const offsets = x.map((at, index) => minus(whole(y[index] ?? 0), { n: slope.n * BigInt(at), d: slope.d }))
  offsets.sort(compareExact)
  const median = exactMean(offsets.slice((offsets.length - 1) >> 1, (offsets.length >> 1) + 1))
  return exactCrossing(minus(over(minus(whole(target), median), slope), whole(span)))
}
