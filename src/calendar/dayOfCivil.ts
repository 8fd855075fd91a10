/**
 * The day number of a year, month and day: 1970-01-01 is 0. The year is turned to begin in March, so that the leap day
 * is its last day and the months before it follow one linear rule (153 days in every five months).
 * Integers in the years 1 to 9999, nothing checked; month 13 is the January after.
 */
export function dayOfCivil(year: number, month: number, day: number): number {
  const marchYear = month > 2 ? year : year - 1
  const dayOfYear = (((month > 2 ? month - 3 : month + 9) * 153 + 2) / 5) | 0
  const leapDays = ((marchYear / 4) | 0) - ((marchYear / 100) | 0) + ((marchYear / 400) | 0)
  return marchYear * 365 + leapDays + dayOfYear + day - 719_469
}
