import { addToDay } from './addToDay.js'
import { dateOfDay } from './dateOfDay.js'
import type { DateText } from './dateText.js'
import { readDay } from './readDay.js'

/**
 * The date a number of days later or earlier. For months and years use {@link addPeriod}: they are not a number of days.
 *
 * @param date - the start
 * @param days - a whole number of days, either sign
 * @returns a date
 * @throws TypeError, RangeError when `date` is not a date, `days` is not whole, or the result leaves the years 0001 to 9999
 *
 * Source: ECMAScript test262, `Temporal/PlainDate/prototype/add/balance-smaller-units-basic` (1976-11-18 and two days).
 *
 * @example
 * ```ts
 * // What is the day after the 28th of February 2031?
 * import { addDays } from 'drivetrain-service/v1/calendar'
 * addDays('2031-02-28', 1) // => '2031-03-01'
 * ```
 */
export function addDays(date: DateText, days: number): DateText {
  if (typeof days !== 'number') throw new TypeError(`days must be a whole number, not ${typeof days}`)
  if (!Number.isSafeInteger(days)) throw new RangeError(`days is ${days}; it must be a whole number`)
  const result = addToDay(readDay(date, 'date'), 0, days)
  if (Number.isNaN(result)) throw new RangeError(`${date} with ${days} days leaves the years 0001 to 9999`)
  return dateOfDay(result)
}
