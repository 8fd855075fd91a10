import type { DateText } from './dateText.js'
import { readDay } from './readDay.js'

/** Compares two dates for sorting: −1, 0 or 1. */
export function compareDates(first: DateText, second: DateText): -1 | 0 | 1 {
  const difference = readDay(first, 'first') - readDay(second, 'second')
  return difference < 0 ? -1 : difference > 0 ? 1 : 0
}
