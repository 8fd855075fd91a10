import { refuse, requireKnownKeys, requireObject } from '../base/index.js'
import { type DateText, readDay } from '../calendar/index.js'
import { DUE_ROW_FIELDS, type DueRowField } from './dueRow.js'
import type { DueOptions } from './intervalFacts.js'
import {
  countsPerUnit,
  MAX_METER_COUNT,
  MAX_PER_DAY,
  meterCount,
  PRODUCT_ERROR,
  ROUNDING_FACTOR,
} from './meterCount.js'
import { requireDueOptions } from './requireDueOptions.js'
import { COMMON_SYNTAX, SQL_SYNTAX, type SqlDialect } from './sqlSyntax.js'

const OPTION_KEYS = ['today', 'soon', 'staleAfter', 'severity', 'columns']

export interface DueSqlOptions extends Omit<DueOptions, 'severity'> {
  readonly today: DateText
  /** The table's column names, if they differ from the fields of `DueRow` in snake case, such as `last_date`. */
  readonly columns?: Partial<Readonly<Record<DueRowField, string>>>
}

/**
 * Writes the verdict on a service as one SQL expression over a table of flat rows, for a fleet in a database. Each
 * row gets the verdict of {@link computeDueColumns}. Dates are `date` columns (text such as `2031-10-06` in
 * SQLite), meters and distances are double precision, periods are integers, `noHourMeter` and `noOdometer`
 * are boolean, and units are text.
 *
 * @param dialect - the database, for its date arithmetic and type names
 * @param options - today, when a service is due soon, how old a reading may be; column names are quoted, so
 *   any name is safe
 * @returns an expression whose value is `overdue`, `due`, `cannot tell`, `due soon` or `not due`
 * @throws TypeError, RangeError if an option is out of range
 *
 * Source: house rule. All three databases limit dates to the end of the month, as ECMAScript's `constrain` does (proved
 * by test).
 *
 * @example
 * ```ts
 * // How does the expression for a calendar fleet begin?
 * import { dueSql } from 'drivetrain-service/v1/interval/fleet'
 * dueSql('duckdb', { today: '2031-10-06', soon: { days: 30 }, staleAfter: { days: 30 } }).slice(0, 10) // => 'CASE least'
 * ```
 */
export function dueSql(dialect: SqlDialect, options: DueSqlOptions): string {
  if (typeof dialect !== 'string' || !Object.hasOwn(SQL_SYNTAX, dialect))
    throw refuse('dialect', dialect, "'postgresql', 'duckdb' or 'sqlite'", 'string')
  requireObject('options', options)
  requireDueOptions({ ...options, severity: 'normal' }, OPTION_KEYS)
  const { today: date, soon, staleAfter, columns = {} } = options
  readDay(date, 'options.today')
  requireKnownKeys('options.columns', columns, DUE_ROW_FIELDS)
  const words = { ...COMMON_SYNTAX, ...SQL_SYNTAX[dialect] }
  const { doubleType, floor, ceil, daysBetween, addPeriod } = words
  const today = words.date(date)
  const writeNumber = (value: number): string => `CAST(${value} AS ${doubleType})`
  const writeColumn = (field: DueRowField): string => {
    const customName = Object.hasOwn(columns, field) ? columns[field] : undefined
    const name = customName ?? field.replace(/[A-Z]/g, (letter) => `_${letter.toLowerCase()}`)
    if (typeof name !== 'string' || name.trim() === '')
      throw refuse(`options.columns.${field}`, name, 'a column name', 'string')
    return words.quoteName(name)
  }
  /** Rounds half up to whole counts, with the same operations as `meterCount`. */
  const roundHalfUp = (product: string, halfExpression: string): string =>
    `(${floor(product)} + CASE WHEN ${product} - ${floor(product)} >= ${halfExpression} THEN 1 ELSE 0 END)`
  const writeHours = (field: DueRowField): string => {
    const product = `(CAST(${writeColumn(field)} AS ${doubleType}) * ${writeNumber(1000)})`
    return roundHalfUp(product, `${writeNumber(0.5)} - ${product} * ${writeNumber(PRODUCT_ERROR)}`)
  }
  const writeDistance =
    (unitField: 'distanceUnit' | 'everyDistanceUnit') =>
    (field: DueRowField): string => {
      const perUnit = `CASE ${writeColumn(unitField)} WHEN 'km' THEN ${writeNumber(countsPerUnit('km'))} WHEN 'mi' THEN ${writeNumber(countsPerUnit('mi'))} END`
      return roundHalfUp(`(CAST(${writeColumn(field)} AS ${doubleType}) * ${perUnit})`, writeNumber(0.5))
    }
  const writeMeterRank = (meter: {
    readonly interval: string
    readonly everyColumn: string
    readonly missingFlag: string
    readonly startReading: string
    readonly now: string
    readonly readingDate: string
    readonly window: string
    readonly windowColumn: string
    readonly soonLead: number | undefined
    readonly maximum: number
    readonly maxPerDay: number
  }): string => {
    const from = writeColumn('lastDate')
    const { startReading, interval } = meter
    const now = `(${meter.now})`
    const readingDate = `(${meter.readingDate})`
    const window = `CASE WHEN ${meter.windowColumn} IS NULL THEN ${writeNumber(0)} ELSE ${meter.window} END`
    const usableCondition = [
      `${readingDate} >= ${from}`,
      `${readingDate} <= ${today}`,
      `${interval} > 0`,
      `${interval} <= ${writeNumber(meter.maximum)}`,
      `${startReading} >= 0`,
      `${startReading} <= ${writeNumber(meter.maximum)}`,
      `${now} <= ${writeNumber(meter.maximum)}`,
      `${now} >= ${startReading}`,
      `${now} - ${startReading} <= (${daysBetween(from, readingDate)} + 1) * ${writeNumber(meter.maxPerDay)}`,
    ].join(' AND ')
    const soonLead =
      meter.soonLead === undefined
        ? 'false'
        : `${now} >= ${startReading} + ${interval} - ${writeNumber(meter.soonLead)}`
    const part =
      soon.fraction === undefined
        ? ''
        : ` OR ${now} >= ${startReading} + ${ceil(`${interval} * ${writeNumber(soon.fraction)} * ${writeNumber(ROUNDING_FACTOR)}`)}`
    return `CASE WHEN ${meter.everyColumn} IS NULL OR COALESCE(${meter.missingFlag}, false) THEN 5
    WHEN NOT COALESCE(${usableCondition}, false) THEN 2
    WHEN ${now} > ${startReading} + ${interval} + ${window} THEN 0
    WHEN ${now} >= ${startReading} + ${interval} THEN 1
    WHEN ${soonLead}${part} THEN 3
    WHEN ${daysBetween(readingDate, today)} > ${staleAfter.days} THEN 2 ELSE 4 END`
  }
  const writeMeterDistance = writeDistance('distanceUnit')
  const writeLimitDistance = writeDistance('everyDistanceUnit')
  const hoursRank = writeMeterRank({
    interval: writeHours('everyHours'),
    everyColumn: writeColumn('everyHours'),
    missingFlag: writeColumn('noHourMeter'),
    startReading: writeHours('lastHours'),
    now: `CASE WHEN ${writeColumn('hours')} IS NULL THEN ${writeHours('lastHours')} ELSE ${writeHours('hours')} END`,
    readingDate: `CASE WHEN ${writeColumn('hours')} IS NULL THEN ${writeColumn('lastDate')} ELSE ${writeColumn('hoursDate')} END`,
    window: writeHours('windowHours'),
    windowColumn: writeColumn('windowHours'),
    soonLead: soon.hours === undefined ? undefined : meterCount(soon.hours, 'h'),
    maximum: MAX_METER_COUNT.hours,
    maxPerDay: MAX_PER_DAY.hours,
  })
  const distanceRank = writeMeterRank({
    interval: writeLimitDistance('everyDistance'),
    everyColumn: writeColumn('everyDistance'),
    missingFlag: writeColumn('noOdometer'),
    startReading: writeMeterDistance('lastDistance'),
    now: `CASE WHEN ${writeColumn('distance')} IS NULL THEN ${writeMeterDistance('lastDistance')} ELSE ${writeMeterDistance('distance')} END`,
    readingDate: `CASE WHEN ${writeColumn('distance')} IS NULL THEN ${writeColumn('lastDate')} ELSE ${writeColumn('distanceDate')} END`,
    window: writeLimitDistance('windowDistance'),
    windowColumn: writeColumn('windowDistance'),
    soonLead: soon.distance === undefined ? undefined : meterCount(soon.distance.value, soon.distance.unit),
    maximum: MAX_METER_COUNT.distance,
    maxPerDay: MAX_PER_DAY.distance,
  })
  const from = writeColumn('lastDate')
  const months = `COALESCE(${writeColumn('everyMonths')}, 0)`
  const days = `COALESCE(${writeColumn('everyDays')}, 0)`
  const dueOn = addPeriod(from, months, days)
  const overdueAfter = addPeriod(
    dueOn,
    `COALESCE(${writeColumn('windowMonths')}, 0)`,
    `COALESCE(${writeColumn('windowDays')}, 0)`,
  )
  const soonDays = soon.days === undefined ? 'false' : `${daysBetween(today, dueOn)} <= ${soon.days}`
  const soonFraction =
    soon.fraction === undefined
      ? ''
      : ` OR ${daysBetween(from, today)} >= ${ceil(`CAST(${daysBetween(from, dueOn)} AS ${doubleType}) * ${writeNumber(soon.fraction)} * ${writeNumber(ROUNDING_FACTOR)}`)}`
  const periodRank = `CASE WHEN ${writeColumn('everyMonths')} IS NULL AND ${writeColumn('everyDays')} IS NULL THEN 5
    WHEN NOT COALESCE(${from} <= ${today} AND ${months} + ${days} > 0 AND ${months} <= 120000 AND ${days} <= 3700000, false) THEN 2
    WHEN ${words.isPastCalendar(dueOn)} THEN 2
    WHEN ${today} > ${overdueAfter} THEN 0
    WHEN ${today} >= ${dueOn} THEN 1
    WHEN ${soonDays}${soonFraction} THEN 3 ELSE 4 END`
  const event = writeColumn('eventDate')
  const eventRank = `CASE WHEN ${event} <= ${today} AND (${from} IS NULL OR ${event} > ${from}) THEN 1 ELSE 5 END`
  return `CASE ${words.smallestOf}(
  ${hoursRank},
  ${distanceRank},
  ${periodRank},
  ${eventRank})
  WHEN 0 THEN 'overdue' WHEN 1 THEN 'due' WHEN 3 THEN 'due soon' WHEN 4 THEN 'not due' ELSE 'cannot tell' END`
}
