/** A calendar date, `YYYY-MM-DD`, proleptic Gregorian, years 0001 to 9999. */
export type DateText = string

/** An ISO 8601 duration of whole years, months, weeks and days, such as `P6M`. */
export type PeriodText = string

/** A calendar period in whole parts. Months and days are never converted into each other. */
export interface Period {
  readonly years: number
  readonly months: number
  readonly weeks: number
  readonly days: number
}
