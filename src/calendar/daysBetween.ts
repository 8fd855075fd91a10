import type { DateText } from './dateText.js'
import { readDay } from './readDay.js'

/**
 * How many days lie between two dates, for the age of a reading or what is left until a due date. Not for asking
 * whether months have passed: add the period to its start with {@link addPeriod} and compare.
 *
 * days = number of `to` − number of `from`
 *
 * @param from - the date counted from
 * @param to - the date counted to
 * @returns a whole number, negative when `to` is the earlier
 * @throws TypeError, RangeError when one is not a date
 *
 * Source: ECMAScript test262, `Temporal/PlainDate/prototype/until` (1969-07-24 to 2019-07-24 is 18,262 days).
 *
 * @example
 * ```ts
 * // How long is the February of a leap year?
 * import { daysBetween } from 'drivetrain-service/v1/calendar'
 * daysBetween('2020-02-01', '2020-03-01') // => 29
 * ```
 */
export function daysBetween(from: DateText, to: DateText): number {
  return readDay(to, 'to') - readDay(from, 'from')
}
