/**
 * The year, month and day of a day number, packed as `year × 10000 + month × 100 + day` so that fleets of dates need
 * no objects. The inverse of `dayOfCivil`, years 1 to 9999, nothing checked.
 */
export function civilOfDay(dayNumber: number): number {
  // Day 0 of the March calendar is 0000-03-01; an era is 400 years of 146,097 days.
  const shifted = dayNumber + 719_468
  const era = (shifted / 146_097) | 0
  const dayOfEra = shifted - era * 146_097
  const yearOfEra =
    ((dayOfEra - ((dayOfEra / 1460) | 0) + ((dayOfEra / 36_524) | 0) - ((dayOfEra / 146_096) | 0)) / 365) | 0
  const dayOfYear = dayOfEra - (365 * yearOfEra + ((yearOfEra / 4) | 0) - ((yearOfEra / 100) | 0))
  const marchMonth = ((5 * dayOfYear + 2) / 153) | 0
  const day = dayOfYear - (((153 * marchMonth + 2) / 5) | 0) + 1
  const month = marchMonth < 10 ? marchMonth + 3 : marchMonth - 9
  const year = yearOfEra + era * 400 + (month <= 2 ? 1 : 0)
  return year * 10_000 + month * 100 + day
}
