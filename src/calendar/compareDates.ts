import type { DateText } from './dateText.js'
import { readDay } from './readDay.js'

/**
 * Which of two dates comes first, for sorting.
 *
 * @param one - a date
 * @param other - a date
 * @returns −1 when `one` is earlier, 0 when they are the same day, 1 when `one` is later
 * @throws TypeError, RangeError when one is not a date
 *
 * Source: house rule; dates of four-digit years sort as their texts do.
 *
 * @example
 * ```ts
 * // Does the end of January come before the first of February?
 * import { compareDates } from 'drivetrain-service/v1/calendar'
 * compareDates('2031-01-31', '2031-02-01') // => -1
 * ```
 */
export function compareDates(one: DateText, other: DateText): -1 | 0 | 1 {
  const difference = readDay(one, 'one') - readDay(other, 'other')
  return difference < 0 ? -1 : difference > 0 ? 1 : 0
}
