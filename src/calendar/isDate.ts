import type { DateText } from './dateText.js'
import { dayNumberOf } from './dayNumbers.js'

/** Whether a value is a date `YYYY-MM-DD` of the years 0001 to 9999; ISO 8601-1:2019, 5.2.2 extended format (from memory). */
export function isDate(text: unknown): text is DateText {
  return !Number.isNaN(dayNumberOf(text))
}
