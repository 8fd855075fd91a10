import { refuse } from '../base/index.js'
import { addToDay } from './addToDay.js'
import { dateFromDay } from './dateFromDay.js'
import type { DateText } from './dateText.js'
import { readDay } from './readDay.js'

/** The date a whole number of days later or earlier. */
export function addDays(date: DateText, days: number): DateText {
  if (!Number.isSafeInteger(days)) throw refuse('days', days, 'a whole number', 'number')
  const result = addToDay(readDay(date, 'date'), 0, days)
  if (Number.isNaN(result))
    throw new RangeError(`${date} plus ${days} days is outside the years 0001 to 9999`)
  return dateFromDay(result)
}
