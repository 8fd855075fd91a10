import { dayFromYearMonthDay } from './dayFromYearMonthDay.js'
import { FIRST_DAY, LAST_DAY } from './dayNumberOf.js'
import { packedDateFromDay } from './packedDateFromDay.js'

/**
 * Adds months, then days, to a day number; a day past the month's end becomes its last day. NaN if the result
 * is outside the years 0001 to 9999. `months` and `days` are integers, positive or negative.
 */
export function addToDay(dayNumber: number, months: number, days: number): number {
  let result = dayNumber
  if (months !== 0) {
    const packedDate = packedDateFromDay(dayNumber)
    const monthCount = ((packedDate / 10_000) | 0) * 12 + (((packedDate / 100) | 0) % 100) - 1 + months
    if (monthCount < 12 || monthCount > 119_999) return NaN
    const year = (monthCount / 12) | 0
    const month = monthCount - year * 12 + 1
    const day = packedDate % 100
    result = dayFromYearMonthDay(year, month, day)
    if (day > 28) result = Math.min(result, dayFromYearMonthDay(year, month + 1, 1) - 1)
  }
  result += days
  return result >= FIRST_DAY && result <= LAST_DAY ? result : NaN
}
