import { refuse } from '../base/index.js'
import { type DueColumns, NO_DAY } from './dueColumns.js'

/**
 * Creates empty columns for a fleet, to be filled by {@link writeDueRow} and judged by
 * {@link computeDueColumns}. The same columns can be used again for the next batch.
 *
 * @param length - number of rows, 0 to 2^31 − 1
 * @returns columns without values
 * @throws TypeError, RangeError if `length` is not a whole number in range
 *
 * Source: house rule.
 *
 * @example
 * ```ts
 * // How many rows do columns for 100 machines have?
 * import { createDueColumns } from 'drivetrain-service/v1/interval/fleet'
 * createDueColumns(100).length // => 100
 * ```
 */
export function createDueColumns(length: number): DueColumns {
  if (!Number.isInteger(length) || length < 0 || length >= 2 ** 31)
    throw refuse('length', length, 'a whole number from 0 to 2147483647', 'number')
  const makeNumbers = (): Float64Array => new Float64Array(length).fill(NaN)
  const makeDays = (): Int32Array => new Int32Array(length).fill(NO_DAY)
  return {
    length,
    lastDay: makeDays(),
    lastHours: makeNumbers(),
    hours: makeNumbers(),
    hoursDay: makeDays(),
    everyHours: makeNumbers(),
    windowHours: new Float64Array(length),
    lastDistance: makeNumbers(),
    distance: makeNumbers(),
    distanceDay: makeDays(),
    everyDistance: makeNumbers(),
    windowDistance: new Float64Array(length),
    everyMonths: new Int32Array(length).fill(-1),
    everyDays: new Int32Array(length),
    windowMonths: new Int32Array(length),
    windowDays: new Int32Array(length),
    eventDay: makeDays(),
    untracked: new Uint8Array(length),
  }
}
