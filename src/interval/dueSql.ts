import { refuse, requireKnownKeys, requireObject } from '../base/index.js'
import { type DateText, readDay } from '../calendar/index.js'
import { DUE_ROW_FIELDS, type DueRowField } from './dueRow.js'
import type { DueOptions } from './intervalFacts.js'
import {
  countsPer,
  MAX_METER_COUNT,
  MAX_PER_DAY,
  meterCount,
  PRODUCT_ERROR,
  ROUNDING_FACTOR,
} from './meterCount.js'
import { requireDueOptions } from './requireDueOptions.js'
import { COMMON_WORDS, SQL_WORDS, type SqlDialect } from './sqlWords.js'

const OPTION_KEYS = ['today', 'soon', 'staleAfter', 'severity', 'columns']

export interface DueSqlOptions extends Omit<DueOptions, 'severity'> {
  readonly today: DateText
  /** The table's column names, if they differ from the fields of `DueRow` in snake case, such as `last_date`. */
  readonly columns?: Partial<Readonly<Record<DueRowField, string>>>
}

/**
 * The verdict on a service as one SQL expression over a table of flat rows, for a fleet in a database. Each row gets
 * the verdict of {@link computeDueColumns}. Dates are `date` columns (in SQLite texts `2031-10-06`), meters and distances double
 * precision, periods integers, `noHourMeter` and `noOdometer` boolean, units text.
 *
 * @param dialect - the database, for its date arithmetic and type names
 * @param options - today, what counts as soon, how old a reading may be; column names are quoted, so any name is safe
 * @returns an expression of text: `overdue`, `due`, `cannot tell`, `due soon` or `not due`
 * @throws TypeError, RangeError if an option is out of range
 *
 * Source: house rule; all three hold month ends as ECMAScript's `constrain` does (proved by test).
 *
 * @example
 * ```ts
 * // How does the expression for a calendar fleet begin?
 * import { dueSql } from 'drivetrain-service/v1/interval/fleet'
 * dueSql('duckdb', { today: '2031-10-06', soon: { days: 30 }, staleAfter: { days: 30 } }).slice(0, 10) // => 'CASE least'
 * ```
 */
export function dueSql(dialect: SqlDialect, options: DueSqlOptions): string {
  if (typeof dialect !== 'string' || !Object.hasOwn(SQL_WORDS, dialect))
    throw refuse('dialect', dialect, "'postgresql', 'duckdb' or 'sqlite'", 'string')
  requireObject('options', options)
  requireDueOptions({ ...options, severity: 'normal' }, OPTION_KEYS)
  const { today: date, soon, staleAfter, columns = {} } = options
  readDay(date, 'options.today')
  requireKnownKeys('options.columns', columns, DUE_ROW_FIELDS)
  const words = { ...COMMON_WORDS, ...SQL_WORDS[dialect] }
  const { realType, floor, ceil, daysBetween, addTo } = words
  const today = words.date(date)
  const number = (value: number): string => `CAST(${value} AS ${realType})`
  const column = (field: DueRowField): string => {
    const given = Object.hasOwn(columns, field) ? columns[field] : undefined
    const name = given ?? field.replace(/[A-Z]/g, (letter) => `_${letter.toLowerCase()}`)
    if (typeof name !== 'string' || name.trim() === '')
      throw refuse(`options.columns.${field}`, name, 'a column name', 'string')
    return words.quoteName(name)
  }
  /** Rounds half up to whole counts, with the same operations as `meterCount`. */
  const roundHalfUp = (product: string, half: string): string =>
    `(${floor(product)} + CASE WHEN ${product} - ${floor(product)} >= ${half} THEN 1 ELSE 0 END)`
  const hours = (field: DueRowField): string => {
    const product = `(CAST(${column(field)} AS ${realType}) * ${number(1000)})`
    return roundHalfUp(product, `${number(0.5)} - ${product} * ${number(PRODUCT_ERROR)}`)
  }
  const distance =
    (unitField: 'distanceUnit' | 'everyDistanceUnit') =>
    (field: DueRowField): string => {
      const perUnit = `CASE ${column(unitField)} WHEN 'km' THEN ${number(countsPer('km'))} WHEN 'mi' THEN ${number(countsPer('mi'))} END`
      return roundHalfUp(`(CAST(${column(field)} AS ${realType}) * ${perUnit})`, number(0.5))
    }
  const meterRank = (meter: {
    readonly every: string
    readonly given: string
    readonly missingFlag: string
    readonly base: string
    readonly now: string
    readonly readOn: string
    readonly window: string
    readonly windowGiven: string
    readonly before: number | undefined
    readonly maximum: number
    readonly maxPerDay: number
  }): string => {
    const from = column('lastDate')
    const { base, every } = meter
    const now = `(${meter.now})`
    const readOn = `(${meter.readOn})`
    const window = `CASE WHEN ${meter.windowGiven} IS NULL THEN ${number(0)} ELSE ${meter.window} END`
    const isUsable = [
      `${readOn} >= ${from}`,
      `${readOn} <= ${today}`,
      `${every} > 0`,
      `${every} <= ${number(meter.maximum)}`,
      `${base} >= 0`,
      `${base} <= ${number(meter.maximum)}`,
      `${now} <= ${number(meter.maximum)}`,
      `${now} >= ${base}`,
      `${now} - ${base} <= (${daysBetween(from, readOn)} + 1) * ${number(meter.maxPerDay)}`,
    ].join(' AND ')
    const before =
      meter.before === undefined ? 'false' : `${now} >= ${base} + ${every} - ${number(meter.before)}`
    const part =
      soon.fraction === undefined
        ? ''
        : ` OR ${now} >= ${base} + ${ceil(`${every} * ${number(soon.fraction)} * ${number(ROUNDING_FACTOR)}`)}`
    return `CASE WHEN ${meter.given} IS NULL OR COALESCE(${meter.missingFlag}, false) THEN 5
    WHEN NOT COALESCE(${isUsable}, false) THEN 2
    WHEN ${now} > ${base} + ${every} + ${window} THEN 0
    WHEN ${now} >= ${base} + ${every} THEN 1
    WHEN ${before}${part} THEN 3
    WHEN ${daysBetween(readOn, today)} > ${staleAfter.days} THEN 2 ELSE 4 END`
  }
  const meters = distance('distanceUnit')
  const limits = distance('everyDistanceUnit')
  const hoursRank = meterRank({
    every: hours('everyHours'),
    given: column('everyHours'),
    missingFlag: column('noHourMeter'),
    base: hours('lastHours'),
    now: `CASE WHEN ${column('hours')} IS NULL THEN ${hours('lastHours')} ELSE ${hours('hours')} END`,
    readOn: `CASE WHEN ${column('hours')} IS NULL THEN ${column('lastDate')} ELSE ${column('hoursDate')} END`,
    window: hours('windowHours'),
    windowGiven: column('windowHours'),
    before: soon.hours === undefined ? undefined : meterCount(soon.hours, 'h'),
    maximum: MAX_METER_COUNT.hours,
    maxPerDay: MAX_PER_DAY.hours,
  })
  const distanceRank = meterRank({
    every: limits('everyDistance'),
    given: column('everyDistance'),
    missingFlag: column('noOdometer'),
    base: meters('lastDistance'),
    now: `CASE WHEN ${column('distance')} IS NULL THEN ${meters('lastDistance')} ELSE ${meters('distance')} END`,
    readOn: `CASE WHEN ${column('distance')} IS NULL THEN ${column('lastDate')} ELSE ${column('distanceDate')} END`,
    window: limits('windowDistance'),
    windowGiven: column('windowDistance'),
    before: soon.distance === undefined ? undefined : meterCount(soon.distance.value, soon.distance.unit),
    maximum: MAX_METER_COUNT.distance,
    maxPerDay: MAX_PER_DAY.distance,
  })
  const from = column('lastDate')
  const months = `COALESCE(${column('everyMonths')}, 0)`
  const days = `COALESCE(${column('everyDays')}, 0)`
  const dueOn = addTo(from, months, days)
  const past = addTo(dueOn, `COALESCE(${column('windowMonths')}, 0)`, `COALESCE(${column('windowDays')}, 0)`)
  const soonDays = soon.days === undefined ? 'false' : `${daysBetween(today, dueOn)} <= ${soon.days}`
  const soonFraction =
    soon.fraction === undefined
      ? ''
      : ` OR ${daysBetween(from, today)} >= ${ceil(`CAST(${daysBetween(from, dueOn)} AS ${realType}) * ${number(soon.fraction)} * ${number(ROUNDING_FACTOR)}`)}`
  const periodRank = `CASE WHEN ${column('everyMonths')} IS NULL AND ${column('everyDays')} IS NULL THEN 5
    WHEN NOT COALESCE(${from} <= ${today} AND ${months} + ${days} > 0 AND ${months} <= 120000 AND ${days} <= 3700000, false) THEN 2
    WHEN ${words.isPastCalendar(dueOn)} THEN 2
    WHEN ${today} > ${past} THEN 0
    WHEN ${today} >= ${dueOn} THEN 1
    WHEN ${soonDays}${soonFraction} THEN 3 ELSE 4 END`
  const event = column('eventDate')
  const eventRank = `CASE WHEN ${event} <= ${today} AND (${from} IS NULL OR ${event} > ${from}) THEN 1 ELSE 5 END`
  return `CASE ${words.least}(
  ${hoursRank},
  ${distanceRank},
  ${periodRank},
  ${eventRank})
  WHEN 0 THEN 'overdue' WHEN 1 THEN 'due' WHEN 3 THEN 'due soon' WHEN 4 THEN 'not due' ELSE 'cannot tell' END`
}
