import { dayOfCivil } from './dayOfCivil.js'
import { daysInMonth } from './daysInMonth.js'

/** The day number of 0001-01-01. */
export const FIRST_DAY = -719_162
/** The day number of 9999-12-31. */
export const LAST_DAY = 2_932_896

/**
 * The day number of a date text (1970-01-01 is 0), or NaN where the text is no date of the years 0001 to 9999 in
 * exactly the form `YYYY-MM-DD`. For the calculations of this library; callers outside use `isDate` and `daysBetween`.
 */
export function dayNumberOf(text: string): number {
  if (text.length !== 10 || text.charCodeAt(4) !== 45 || text.charCodeAt(7) !== 45) return Number.NaN
  const century = twoDigits(text, 0)
  const yearOfCentury = twoDigits(text, 2)
  const month = twoDigits(text, 5)
  const day = twoDigits(text, 8)
  const year = century * 100 + yearOfCentury
  if (century < 0 || yearOfCentury < 0 || year < 1 || month < 1 || month > 12 || day < 1 || day > 31)
    return Number.NaN
  if (day > 28 && day > daysInMonth(year, month)) return Number.NaN
  return dayOfCivil(year, month, day)
}

/** Two digits as a number; −1 where one of the characters is no digit. */
function twoDigits(text: string, at: number): number {
  const tens = text.charCodeAt(at) - 48
  const ones = text.charCodeAt(at + 1) - 48
  return tens >= 0 && tens <= 9 && ones >= 0 && ones <= 9 ? tens * 10 + ones : -1
}
