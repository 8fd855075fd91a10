import { Decimal } from 'decimal.js'

let own: typeof Decimal | undefined

/**
 * Our own constructor, made at first use: the shared one may be set by anybody in the process. JSON numbers are taken by
 * their shortest decimal, so that three times 0.1 L is 0.3 L, which a container of 0.3 L holds.
 */
function exact(): typeof Decimal {
  own ??= Decimal.clone({ defaults: true, precision: 60 })
  return own
}

/** The sum of numbers as they are written, rounded once to the nearest double. */
export function addExactly(numbers: readonly number[]): number {
  const Exact = exact()
  return numbers.reduce((sum, next) => sum.plus(next), new Exact(0)).toNumber()
}

/** A number as it is written, times a count, rounded once. */
export function multiplyExactly(number: number, count: number): number {
  const Exact = exact()
  return new Exact(number).times(count).toNumber()
}

/** A number as it is written, shared out, rounded once. */
export function divideExactly(number: number, count: number): number {
  const Exact = exact()
  return new Exact(number).div(count).toNumber()
}
