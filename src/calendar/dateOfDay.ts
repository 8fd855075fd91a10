import { civilOfDay } from './civilOfDay.js'
import type { DateText } from './dateText.js'

/** The date text of a day number from `FIRST_DAY` to `LAST_DAY`; nothing checked. The inverse of `dayNumberOf`. */
export function dateOfDay(dayNumber: number): DateText {
  const packed = civilOfDay(dayNumber)
  const digits = packed < 10_000_000 ? String(packed).padStart(8, '0') : String(packed)
  return `${digits.slice(0, 4)}-${digits.slice(4, 6)}-${digits.slice(6)}`
}
