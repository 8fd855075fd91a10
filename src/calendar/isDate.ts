import type { DateText } from './dateText.js'
import { dayNumberOf } from './dayNumberOf.js'

/**
 * Whether a value is a calendar date in the one form that the documents use, for anyone who reads dates from outside.
 * For a value that must be a date, {@link daysBetween} and {@link addPeriod} throw by themselves.
 *
 * `YYYY-MM-DD`, proleptic Gregorian, years 0001 to 9999, both ends included; no time, no sign, no blanks.
 *
 * @param text - anything
 * @returns true for a date that exists
 *
 * Source: ISO 8601-1:2019, 5.2.2 extended format (from memory); the year range is a house rule, so that dates sort as text.
 *
 * @example
 * ```ts
 * // Was 2100 a leap year?
 * import { isDate } from 'drivetrain-service/v1/calendar'
 * isDate('2100-02-29') // => false
 * ```
 */
export function isDate(text: unknown): text is DateText {
  return !Number.isNaN(dayNumberOf(text))
}
