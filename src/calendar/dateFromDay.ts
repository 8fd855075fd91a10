import { civilOfDay } from './civilOfDay.js'
import type { DateText } from './dateText.js'

/** The date text of a day number from `FIRST_DAY` to `LAST_DAY`; nothing checked. The inverse of `dayNumberOf`. */
export function dateFromDay(dayNumber: number): DateText {
  const packed = civilOfDay(dayNumber)
  // Character by character: joining year, month and day would make five strings on the way to one.
  const digit = (place: number): number => 48 + (((packed / place) | 0) % 10)
  return String.fromCharCode(
    digit(10_000_000),
    digit(1_000_000),
    digit(100_000),
    digit(10_000),
    45,
    digit(1000),
    digit(100),
    45,
    digit(10),
    digit(1),
  )
}
