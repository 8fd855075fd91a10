/**
 * The year, month and day of a day number as `year × 10000 + month × 100 + day`, to avoid an object for each
 * date. The inverse of `dayFromYearMonthDay`; years 1 to 9999, not checked.
 */
export function packedDateFromDay(dayNumber: number): number {
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
