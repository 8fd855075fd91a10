import { dayFromYearMonthDay } from './dayFromYearMonthDay.js'
import { packedDateFromDay } from './packedDateFromDay.js'

/** The day number of 0001-01-01. */
export const FIRST_DAY = -719_162
/** The day number of 9999-12-31. */
export const LAST_DAY = 2_932_896

/**
 * The day number of a date (1970-01-01 is 0). NaN if the text is not a date of the years 0001 to 9999 in the
 * form `YYYY-MM-DD`.
 */
export function dayNumberOf(text: unknown): number {
  if (typeof text !== 'string' || text.length !== 10) return NaN
  let packedDate = 0
  // Hot path: no regular expression, no substrings.
  for (let at = 0; at < 10; at++) {
    const digit = text.charCodeAt(at) - 48
    // The code of a hyphen is three less than that of 0.
    if (at === 4 || at === 7 ? digit !== -3 : digit < 0 || digit > 9) return NaN
    if (digit >= 0) packedDate = packedDate * 10 + digit
  }
  const day = dayFromYearMonthDay((packedDate / 10_000) | 0, ((packedDate / 100) | 0) % 100, packedDate % 100)
  // 30 February gives a day in March: only a real date comes back unchanged.
  return packedDate > 10_000 && packedDateFromDay(day) === packedDate ? day : NaN
}
