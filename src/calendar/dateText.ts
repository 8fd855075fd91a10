/** A calendar date, `YYYY-MM-DD`, proleptic Gregorian, years 0001 to 9999. */
export type DateText = string

/** An ISO 8601 duration of whole years, months, weeks and days, such as `P6M`. */
export type PeriodText = string
