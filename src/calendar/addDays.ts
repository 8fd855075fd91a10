import { addToDay } from './addToDay.js'
import { dateFromDay } from './dateFromDay.js'
import type { DateText } from './dateText.js'
import { readDay } from './readDay.js'

/** The date a whole number of days later or earlier. */
export function addDays(date: DateText, days: number): DateText {
  if (typeof days !== 'number') throw new TypeError(`days must be a whole number, not ${typeof days}`)
  if (!Number.isSafeInteger(days)) throw new RangeError(`days is ${days}; it must be a whole number`)
  const result = addToDay(readDay(date, 'date'), 0, days)
  if (Number.isNaN(result)) throw new RangeError(`${date} with ${days} days leaves the years 0001 to 9999`)
  return dateFromDay(result)
}
