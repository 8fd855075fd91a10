/**
 * The day number of a year, month and day: 1970-01-01 is 0. Years begin in March here, so that the leap day
 * comes last and the months follow one linear rule (153 days in every five months). For years 1 to 9999, not
 * checked; month 13 is the next January.
 */
export function dayFromYearMonthDay(year: number, month: number, day: number): number {
  const marchYear = month > 2 ? year : year - 1
  const century = (marchYear / 100) | 0
  const dayOfYear = ((((month + 9) % 12) * 153 + 2) / 5) | 0
  return ((marchYear * 1461) >> 2) - century + (century >> 2) + dayOfYear + day - 719_469
}
