import { civilOfDay } from './civilOfDay.js'
import type { DateText } from './dateText.js'

/** The date text of a day number from `FIRST_DAY` to `LAST_DAY`; nothing checked. The inverse of `dayNumberOf`. */
export function dateOfDay(dayNumber: number): DateText {
  const packed = civilOfDay(dayNumber)
  const year = (packed / 10_000) | 0
  const month = ((packed / 100) | 0) % 100
  const day = packed % 100
  const zeros = year > 999 ? '' : year > 99 ? '0' : year > 9 ? '00' : '000'
  return `${zeros}${year}${month < 10 ? '-0' : '-'}${month}${day < 10 ? '-0' : '-'}${day}`
}
