/**
 * How many days a month of the proleptic Gregorian calendar has. Every fourth year is a leap year, save the
 * centuries that 400 does not divide. `month` is 1 to 12; integers in, nothing checked: the callers have read a date.
 */
export function daysInMonth(year: number, month: number): number {
  if (month === 2) return year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0) ? 29 : 28
  return month === 4 || month === 6 || month === 9 || month === 11 ? 30 : 31
}
