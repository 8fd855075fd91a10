import type { DateText } from '../calendar/index.js'

export type SqlDialect = 'postgresql' | 'duckdb' | 'sqlite' | 'clickhouse'

/** The syntax that differs between databases. */
export interface SqlSyntax {
  readonly doubleType: string
  readonly smallestOf: string
  /** Quotes any column name. */
  readonly quoteName: (name: string) => string
  readonly date: (date: DateText) => string
  readonly floor: (number: string) => string
  readonly ceil: (number: string) => string
  readonly daysBetween: (from: string, to: string) => string
  /** The types for NULL as a date and as a text. */
  readonly dateType: string
  readonly textType: string
  /** A date plus months, limited to the end of the month, plus days. */
  readonly addPeriod: (date: string, months: string, days: string) => string
  /** Whether a due date, calculated from known values, is past the calendar's end. */
  readonly isPastCalendar: (date: string) => string
}

const date = (text: DateText): string => `DATE '${text}'`
const castToInteger = (number: string): string => `CAST(${number} AS integer)`
/**
 * The syntax of most dialects. {@link dueSql} merges the tables: a table merged here would be in every
 * bundle.
 */
export const COMMON_SYNTAX: Omit<SqlSyntax, 'doubleType' | 'addPeriod'> = {
  smallestOf: 'least',
  quoteName: (name) => `"${name.replaceAll('"', '""')}"`,
  date,
  dateType: 'date',
  textType: 'text',
  floor: (number) => `floor(${number})`,
  ceil: (number) => `ceil(${number})`,
  daysBetween: (from, to) => `${to} - ${from}`,
  isPastCalendar: (day) => `${day} > ${date('9999-12-31')}`,
}

export const SQL_SYNTAX: Readonly<
  Record<SqlDialect, Pick<SqlSyntax, 'doubleType' | 'addPeriod'> & Partial<SqlSyntax>>
> = {
  postgresql: {
    doubleType: 'double precision',
    addPeriod: (day, months, days) =>
      `CAST(${day} + make_interval(months => ${castToInteger(months)}, days => ${castToInteger(days)}) AS date)`,
  },
  duckdb: {
    doubleType: 'double',
    addPeriod: (day, months, days) =>
      `CAST(${day} + to_months(${castToInteger(months)}) + to_days(${castToInteger(days)}) AS date)`,
  },
  // `Date32` ends with 2299; a later due date counts as past the calendar. A backslash escapes in names too.
  clickhouse: {
    doubleType: 'Nullable(Float64)',
    dateType: 'Nullable(Date32)',
    textType: 'Nullable(String)',
    quoteName: (name) => `\`${name.replaceAll('\\', '\\\\').replaceAll('`', '\\`')}\``,
    date: (text) => `toDate32('${text}')`,
    daysBetween: (from, to) => `dateDiff('day', ${from}, ${to})`,
    addPeriod: (day, months, days) =>
      `addDays(addMonths(${day}, CAST(${months} AS Nullable(Int32))), CAST(${days} AS Nullable(Int32)))`,
    isPastCalendar: (day) => `${day} > toDate32('2299-12-31')`,
  },
  // Dates are text. Some builds have no floor and ceil. Months are added to the first day of the month, and
  // the result is limited to the last day of its month.
  sqlite: {
    doubleType: 'real',
    smallestOf: 'min',
    // In double quotes, an unknown column would be read as text.
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
