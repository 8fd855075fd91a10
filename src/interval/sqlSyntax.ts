import type { DateText } from '../calendar/index.js'

export type SqlDialect = 'postgresql' | 'duckdb' | 'sqlite'

/** What one database writes in its own way. */
export interface SqlSyntax {
  readonly realType: string
  readonly smallestOf: string
  /** A column's name, for any name. */
  readonly quoteName: (name: string) => string
  readonly date: (date: DateText) => string
  readonly floor: (number: string) => string
  readonly ceil: (number: string) => string
  readonly daysBetween: (from: string, to: string) => string
  /** A date plus months, at most to the end of the month, then plus days. */
  readonly addPeriod: (date: string, months: string, days: string) => string
  /** Whether a due date is past the calendar's end; the date is known. */
  readonly isPastCalendar: (date: string) => string
}

const date = (text: DateText): string => `DATE '${text}'`
const castToInteger = (number: string): string => `CAST(${number} AS integer)`
/** The words of most dialects. {@link dueSql} joins them: a table that is joined here would be in every bundle. */
export const COMMON_SYNTAX: Omit<SqlSyntax, 'realType' | 'addPeriod'> = {
  smallestOf: 'least',
  quoteName: (name) => `"${name.replaceAll('"', '""')}"`,
  date,
  floor: (number) => `floor(${number})`,
  ceil: (number) => `ceil(${number})`,
  daysBetween: (from, to) => `${to} - ${from}`,
  isPastCalendar: (day) => `${day} > ${date('9999-12-31')}`,
}

export const SQL_SYNTAX: Readonly<
  Record<SqlDialect, Pick<SqlSyntax, 'realType' | 'addPeriod'> & Partial<SqlSyntax>>
> = {
  postgresql: {
    realType: 'double precision',
    addPeriod: (day, months, days) =>
      `CAST(${day} + make_interval(months => ${castToInteger(months)}, days => ${castToInteger(days)}) AS date)`,
  },
  duckdb: {
    realType: 'double',
    addPeriod: (day, months, days) =>
      `CAST(${day} + to_months(${castToInteger(months)}) + to_days(${castToInteger(days)}) AS date)`,
  },
  // Dates are texts. Some builds have no floor and ceil. Months run over into the next one, so the last day of the month is the limit.
  sqlite: {
    realType: 'real',
    smallestOf: 'min',
    // In double quotes, a column that is not there would be a text.
    quoteName: (name) => `\`${name.replaceAll('`', '``')}\``,
    date: (text) => `'${text}'`,
    floor: (number) => `(${castToInteger(number)} - (${number} < ${castToInteger(number)}))`,
    ceil: (number) => `(${castToInteger(number)} + (${number} > ${castToInteger(number)}))`,
    daysBetween: (from, to) => castToInteger(`julianday(${to}) - julianday(${from})`),
    addPeriod: (day, months, days) => {
      const first = `${day}, 'start of month'`
      const sameDay = `date(${first}, '+' || ${castToInteger(months)} || ' months', '+' || (strftime('%d', ${day}) - 1) || ' days')`
      const lastDay = `date(${first}, '+' || (${castToInteger(months)} + 1) || ' months', '-1 days')`
      return `date(min(${sameDay}, ${lastDay}), '+' || ${castToInteger(days)} || ' days')`
    },
    isPastCalendar: (day) => `${day} IS NULL`,
  },
}
