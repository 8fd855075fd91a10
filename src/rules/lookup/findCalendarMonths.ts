const HOURS_PER_MONTH = [720, 730, 730.5, 732, 744]
const MONTHS = [1, 2, 3, 4, 6, 9, 12, 18, 24, 36, 48, 60]

/** The smallest number of calendar months equal to these hours. */
export const findCalendarMonths = (hours: number): number | undefined =>
  MONTHS.find((count) => HOURS_PER_MONTH.some((month) => hours === count * month))
