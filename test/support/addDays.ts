import { addToDay } from '../../src/calendar/addToDay.js'
import { dateFromDay } from '../../src/calendar/dateFromDay.js'
import type { DateText } from '../../src/calendar/dateText.js'
import { readDay } from '../../src/calendar/readDay.js'

/** The date a whole number of days later or earlier. */
export function addDays(date: DateText, days: number): DateText {
  return dateFromDay(addToDay(readDay(date, 'date'), 0, days))
}
