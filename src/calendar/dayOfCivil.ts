/**
 * The day number of a year, month and day: 1970-01-01 is 0. The year is turned to begin in March, so that the leap day
 * is its last day and the months before it follow one linear rule (153 days in every five months).
 * Integers in the years 1 to 9999, nothing checked; month 13 is the January after.
 */
export function dayOfCivil(year: number, month: number, day: number): number {
  const marchYear = month > 2 ? year : year - 1
  const century = (marchYear / 100) | 0
  const dayOfYear = ((((month + 9) % 12) * 153 + 2) / 5) | 0
  return ((marchYear * 1461) >> 2) - century + (century >> 2) + dayOfYear + day - 719_469
}
