import { refuse } from '../base/index.js'
import type { DateText } from './dateText.js'

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
  // 30 February becomes a day in March: only a real date is unchanged.
  return packedDate > 10_000 && packedDateFromDay(day) === packedDate ? day : NaN
}

/**
 * The day number of a year, month and day: 1970-01-01 is 0. Years begin in March here, so that the leap day
 * comes last and the months follow one linear rule (153 days in every five months). For years 1 to 9999, not
 * checked; month 13 is the next January.
 */
function dayFromYearMonthDay(year: number, month: number, day: number): number {
  const yearFromMarch = month > 2 ? year : year - 1
  const century = (yearFromMarch / 100) | 0
  const dayOfYear = ((((month + 9) % 12) * 153 + 2) / 5) | 0
  return ((yearFromMarch * 1461) >> 2) - century + (century >> 2) + dayOfYear + day - 719_469
}

/**
 * The year, month and day of a day number as `year × 10000 + month × 100 + day`, to avoid an object for each
 * date. The inverse of `dayFromYearMonthDay`; years 1 to 9999, not checked.
 */
function packedDateFromDay(dayNumber: number): number {
  // Years begin in March here: day 0 is 0000-03-01. Four centuries have 146,097 days, four years 1461.
  const shiftedDay = dayNumber + 719_468
  const century = ((shiftedDay * 4 + 3) / 146_097) | 0
  const dayOfCentury = shiftedDay - ((century * 146_097) >> 2)
  const year = ((dayOfCentury * 4 + 3) / 1461) | 0
  const dayOfYear = dayOfCentury - ((year * 1461) >> 2)
  const month = ((dayOfYear * 5 + 2) / 153) | 0
  const day = dayOfYear - (((month * 153 + 2) / 5) | 0) + 1
  // Months 10 and 11 are January and February of the next year.
  return (century * 100 + year) * 10_000 + (month < 10 ? month + 3 : month + 91) * 100 + day
}

/** The date of a day number from `FIRST_DAY` to `LAST_DAY`, not checked. The inverse of `dayNumberOf`. */
export function dateFromDay(dayNumber: number): DateText {
  const digits = String(packedDateFromDay(dayNumber) + 100_000_000)
  return `${digits.slice(1, 5)}-${digits.slice(5, 7)}-${digits.slice(7)}`
}

/** The day number of a date argument; throws if it is not a date. */
export function readDay(date: unknown, argument: string): number {
  const day = typeof date === 'string' ? dayNumberOf(date) : NaN
  if (Number.isNaN(day)) throw refuse(argument, date, 'a date from 0001-01-01 to 9999-12-31', 'string')
  return day
}

/**
 * Days from one date to another. To see whether a number of months has passed, add them to the start and
 * compare.
 */
export function daysBetween(from: DateText, to: DateText): number {
  return readDay(to, 'to') - readDay(from, 'from')
}

/** Compares two dates for sorting: −1, 0 or 1. */
export function compareDates(first: DateText, second: DateText): -1 | 0 | 1 {
  const difference = readDay(first, 'first') - readDay(second, 'second')
  return difference < 0 ? -1 : difference > 0 ? 1 : 0
}

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
