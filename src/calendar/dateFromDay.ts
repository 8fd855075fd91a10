import type { DateText } from './dateText.js'
import { packedDateFromDay } from './packedDateFromDay.js'

/** The date of a day number from `FIRST_DAY` to `LAST_DAY`, not checked. The inverse of `dayNumberOf`. */
export function dateFromDay(dayNumber: number): DateText {
  const digits = String(packedDateFromDay(dayNumber) + 100_000_000)
  return `${digits.slice(1, 5)}-${digits.slice(5, 7)}-${digits.slice(7)}`
}
