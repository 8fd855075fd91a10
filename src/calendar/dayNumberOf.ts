import { civilOfDay } from './civilOfDay.js'
import { dayOfCivil } from './dayOfCivil.js'

/** The day number of 0001-01-01. */
export const FIRST_DAY = -719_162
/** The day number of 9999-12-31. */
export const LAST_DAY = 2_932_896

/**
 * The day number of a date text (1970-01-01 is 0), or NaN where it is not a text or not a date of the years 0001 to 9999 in
 * exactly the form `YYYY-MM-DD`. For the calculations of this library; callers outside use `isDate` and `daysBetween`.
 */
export function dayNumberOf(text: unknown): number {
  if (
    typeof text !== 'string' ||
    text.length !== 10 ||
    text.charCodeAt(4) !== 45 ||
    text.charCodeAt(7) !== 45
  )
    return Number.NaN
  const year = twoDigits(text, 0) * 100 + twoDigits(text, 2)
  const month = twoDigits(text, 5)
  const day = twoDigits(text, 8)
  if (year < 1 || month < 1 || month > 12 || day < 1 || day > 31) return Number.NaN
  const result = dayOfCivil(year, month, day)
  // The 30th of February would be a day of March: only a date that exists comes back as it was.
  return day > 28 && civilOfDay(result) % 100 !== day ? Number.NaN : result
}

/** Two digits as a number; where one of the characters is no digit, so far below zero that no year can make it good. */
function twoDigits(text: string, at: number): number {
  const tens = text.charCodeAt(at) - 48
  const ones = text.charCodeAt(at + 1) - 48
  return tens >= 0 && tens <= 9 && ones >= 0 && ones <= 9 ? tens * 10 + ones : -10_000
}
