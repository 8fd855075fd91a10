import { quoteValue, refuse } from '../base/index.js'
import type { DateText, Period, PeriodText } from './dateText.js'
import { addToDay, dateFromDay, readDay } from './dayNumbers.js'
import { scanPeriod } from './parsePeriod.js'

/**
 * Adds periods to a date, to find when something is due. Always add to the start date, with `times`, never to
 * the last result: 31 January plus two months is 31 March, but in two steps it is 28 March (28 February plus
 * one month).
 *
 * result = start + times × (years, months), at the latest the month's last day, then + times × (weeks, days)
 *
 * @param date - the start
 * @param period - an object of parts, or ISO 8601 text of whole parts such as `P6M`
 * @param times - number of periods, a whole number, positive or negative; default 1
 * @returns a date
 * @throws TypeError, RangeError if an argument is not valid, or the result is outside the years 0001 to 9999
 *
 * Source: ECMAScript test262, `Temporal/PlainDate/prototype/add/constrain-days` (overflow `constrain`).
 *
 * @example
 * ```ts
 * // When is a service due that was last done on 31 August 2023 and is due every six months?
 * import { addPeriod } from 'drivetrain-service/v1/calendar'
 * addPeriod('2023-08-31', 'P6M') // => '2024-02-29'
 * ```
 */
export function addPeriod(date: DateText, period: Period | PeriodText, times = 1): DateText {
  const start = readDay(date, 'date')
  if (!Number.isSafeInteger(times)) throw refuse('times', times, 'a whole number', 'number')
  const parts = readPeriod(period)
  const result = addToDay(
    start,
    (parts.years * 12 + parts.months) * times,
    (parts.weeks * 7 + parts.days) * times,
  )
  if (Number.isNaN(result))
    throw new RangeError(`${date} plus ${times} periods is outside the years 0001 to 9999`)
  return dateFromDay(result)
}

function readPeriod(period: Period | PeriodText): Period {
  if (typeof period === 'string') {
    const parsedPeriod = scanPeriod(period)
    if (parsedPeriod === undefined) throw refuse('period', period, 'a period such as P6M or P1Y', 'string')
    return parsedPeriod
  }
  if (typeof period !== 'object' || period === null)
    throw refuse('period', period, 'text such as P6M, or an object of parts')
  for (const part of ['years', 'months', 'weeks', 'days'] as const) {
    if (!Number.isSafeInteger(period[part]))
      throw new RangeError(`period.${part} must be a whole number, got ${quoteValue(period[part])}`)
  }
  return period
}
