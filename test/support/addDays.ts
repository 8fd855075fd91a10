import type { DateText } from '../../src/calendar/dateText.js'
import { addToDay, dateFromDay, readDay } from '../../src/calendar/dayNumbers.js'

/** The date a whole number of days later or earlier. */
export function addDays(date: DateText, days: number): DateText {
  return dateFromDay(addToDay(readDay(date, 'date'), 0, days))
}
