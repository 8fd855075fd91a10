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

const OPTION_KEYS = ['today', 'soon', 'staleAfter', 'severity', 'columns', 'query']

export interface DueSqlOptions extends Omit<DueOptions, 'severity'> {
  readonly today: DateText
  /**
   * The table's column names, if they differ from the fields of `DueRow` in snake case, such as `last_date`. Null: the table
   * has no such column. It is read as if NULL were in every row, and what depends on it is left out of the text.
   */
  readonly columns?: { readonly [Field in DueRowField]?: string | (Field extends 'lastDate' ? never : null) }
  /**
   * Gives a whole query of these columns of a table (or view), and `verdict`, instead of an expression. It calculates what the
   * verdict uses several times in subqueries, once for each row: it is shorter and takes about half the time.
   */
  readonly query?: { readonly table: string; readonly columns: readonly string[] }
}

/**
 * Writes the verdict on a service as one SQL expression over a table of flat rows, for a fleet in a database. Each
 * row gets the verdict of {@link computeDueColumns}. Dates are `date` columns (text such as `2031-10-06` in
 * SQLite, `Date32` in ClickHouse, which ends with 2299), meters and distances are double precision, periods are integers, `noHourMeter` and `noOdometer`
 * are boolean, and units are text.
 *
 * @param dialect - the database, for its date arithmetic and type names
 * @param options - today, when a service is due soon, how old a reading may be; column names are quoted, so
 *   any name is safe
 * @returns an expression whose value is `overdue`, `due`, `cannot tell`, `due soon` or `not due`
 * @throws TypeError, RangeError if an option is out of range
 *
 * Source: house rule. All four databases limit dates to the end of the month, as ECMAScript's `constrain` does (proved
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
    throw refuse('dialect', dialect, "'postgresql', 'duckdb', 'sqlite' or 'clickhouse'", 'string')
  requireObject('options', options)
  requireDueOptions({ ...options, severity: 'normal' }, OPTION_KEYS)
  const { today: date, soon, staleAfter, columns = {}, query } = options
  readDay(date, 'options.today')
  requireKnownKeys('options.columns', columns, DUE_ROW_FIELDS)
  const words = { ...COMMON_SYNTAX, ...SQL_SYNTAX[dialect] }
  const { doubleType, floor, ceil, daysBetween, addPeriod } = words
  const today = words.date(date)
  const writeNumber = (value: number): string => `CAST(${value} AS ${doubleType})`
  const quoteName = (argument: string, name: unknown): string => {
    if (typeof name !== 'string' || name.trim() === '')
      throw refuse(argument, name, 'a column name', 'string')
    return words.quoteName(name)
  }
  const hasColumn = (field: DueRowField): boolean =>
    field === 'lastDate' || !Object.hasOwn(columns, field) || columns[field] !== null
  const writeColumn = (field: DueRowField): string => {
    if (!hasColumn(field))
      return `CAST(NULL AS ${/Date$/.test(field) ? words.dateType : /Unit$/.test(field) ? words.textType : doubleType})`
    const customName = Object.hasOwn(columns, field) ? columns[field] : undefined
    const name =
      customName === undefined ? field.replace(/[A-Z]/g, (letter) => `_${letter.toLowerCase()}`) : customName
    return quoteName(`options.columns.${field}`, name)
  }
  const levels: string[][] = []
  /** In a query, calculates an expression once, in the subquery of its level; it may use those of lower levels. */
  const writeOnce = (level: number, expression: string): string => {
    if (query === undefined) return expression
    levels[level] ??= []
    const name = `due_${level}_${levels[level].length}`
    levels[level].push(`${expression} AS ${name}`)
    return name
  }
  /** Rounds half up to whole counts, with the same operations as `meterCount`. */
  const roundHalfUp = (product: string, writeHalf: (product: string) => string): string => {
    const once = writeOnce(0, product)
    const whole = writeOnce(1, floor(once))
    return writeOnce(2, `(${whole} + CASE WHEN ${once} - ${whole} >= ${writeHalf(once)} THEN 1 ELSE 0 END)`)
  }
  const writeHours = (field: DueRowField): string => {
    const product = `(CAST(${writeColumn(field)} AS ${doubleType}) * ${writeNumber(1000)})`
    return roundHalfUp(product, (once) => `${writeNumber(0.5)} - ${once} * ${writeNumber(PRODUCT_ERROR)}`)
  }
  const writeDistance =
    (unitField: 'distanceUnit' | 'everyDistanceUnit') =>
    (field: DueRowField): string => {
      const perUnit = `CASE ${writeColumn(unitField)} WHEN 'km' THEN ${writeNumber(countsPerUnit('km'))} WHEN 'mi' THEN ${writeNumber(countsPerUnit('mi'))} END`
      return roundHalfUp(`(CAST(${writeColumn(field)} AS ${doubleType}) * ${perUnit})`, () =>
        writeNumber(0.5),
      )
    }
  const writeMeterRank = (meter: {
    readonly interval: string
    readonly everyField: DueRowField
    readonly missingFlag: DueRowField
    readonly startReading: string
    readonly now: string
    readonly readingDate: string
    readonly window: () => string
    readonly windowField: DueRowField
    readonly soonLead: number | undefined
    readonly maximum: number
    readonly maxPerDay: number
  }): string => {
    const from = writeColumn('lastDate')
    const { startReading, interval } = meter
    const now = writeOnce(3, `(${meter.now})`)
    const readingDate = writeOnce(3, `(${meter.readingDate})`)
    const window = hasColumn(meter.windowField)
      ? ` + CASE WHEN ${writeColumn(meter.windowField)} IS NULL THEN ${writeNumber(0)} ELSE ${meter.window()} END`
      : ''
    const isMissing = hasColumn(meter.missingFlag)
      ? ` OR COALESCE(${writeColumn(meter.missingFlag)}, false)`
      : ''
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
    return `CASE WHEN ${writeColumn(meter.everyField)} IS NULL${isMissing} THEN 5
    WHEN NOT COALESCE(${usableCondition}, false) THEN 2
    WHEN ${now} > ${startReading} + ${interval}${window} THEN 0
    WHEN ${now} >= ${startReading} + ${interval} THEN 1
    WHEN ${soonLead}${part} THEN 3
    WHEN ${daysBetween(readingDate, today)} > ${staleAfter.days} THEN 2 ELSE 4 END`
  }
  const writeMeterDistance = writeDistance('distanceUnit')
  const writeLimitDistance = writeDistance('everyDistanceUnit')
  /** The later reading, or that of the last service if there is none. */
  const chooseLatest = (field: DueRowField, lastValue: string, writeLatest: () => string): string =>
    hasColumn(field)
      ? `CASE WHEN ${writeColumn(field)} IS NULL THEN ${lastValue} ELSE ${writeLatest()} END`
      : lastValue
  const writeCount = (field: DueRowField): string =>
    hasColumn(field) ? `COALESCE(${writeColumn(field)}, 0)` : '0'
  const writeHoursRank = (lastHours: string) =>
    writeMeterRank({
      interval: writeHours('everyHours'),
      everyField: 'everyHours',
      missingFlag: 'noHourMeter',
      startReading: lastHours,
      now: chooseLatest('hours', lastHours, () => writeHours('hours')),
      readingDate: chooseLatest('hours', writeColumn('lastDate'), () => writeColumn('hoursDate')),
      window: () => writeHours('windowHours'),
      windowField: 'windowHours',
      soonLead: soon.hours === undefined ? undefined : meterCount(soon.hours, 'h'),
      maximum: MAX_METER_COUNT.hours,
      maxPerDay: MAX_PER_DAY.hours,
    })
  const writeDistanceRank = (lastDistance: string) =>
    writeMeterRank({
      interval: writeLimitDistance('everyDistance'),
      everyField: 'everyDistance',
      missingFlag: 'noOdometer',
      startReading: lastDistance,
      now: chooseLatest('distance', lastDistance, () => writeMeterDistance('distance')),
      readingDate: chooseLatest('distance', writeColumn('lastDate'), () => writeColumn('distanceDate')),
      window: () => writeLimitDistance('windowDistance'),
      windowField: 'windowDistance',
      soonLead: soon.distance === undefined ? undefined : meterCount(soon.distance.value, soon.distance.unit),
      maximum: MAX_METER_COUNT.distance,
      maxPerDay: MAX_PER_DAY.distance,
    })
  const from = writeColumn('lastDate')
  const writePeriodRank = (): string => {
    const months = writeCount('everyMonths')
    const days = writeCount('everyDays')
    const isUsable = `COALESCE(${from} <= ${today} AND ${months} + ${days} > 0 AND ${months} <= 120000 AND ${days} <= 3700000, false)`
    const dueDate = addPeriod(from, months, days)
    // A subquery is calculated for every row: a period that cannot be used must not reach the database's own limits.
    const dueOn = query === undefined ? dueDate : writeOnce(0, `CASE WHEN ${isUsable} THEN ${dueDate} END`)
    const overdueAfter =
      hasColumn('windowMonths') || hasColumn('windowDays')
        ? addPeriod(dueOn, writeCount('windowMonths'), writeCount('windowDays'))
        : dueOn
    const soonDays = soon.days === undefined ? 'false' : `${daysBetween(today, dueOn)} <= ${soon.days}`
    const soonFraction =
      soon.fraction === undefined
        ? ''
        : ` OR ${daysBetween(from, today)} >= ${ceil(`CAST(${daysBetween(from, dueOn)} AS ${doubleType}) * ${writeNumber(soon.fraction)} * ${writeNumber(ROUNDING_FACTOR)}`)}`
    const hasNoPeriod = (['everyMonths', 'everyDays'] as const)
      .filter(hasColumn)
      .map((field) => `${writeColumn(field)} IS NULL`)
      .join(' AND ')
    return `CASE WHEN ${hasNoPeriod} THEN 5
    WHEN NOT ${isUsable} THEN 2
    WHEN ${words.isPastCalendar(dueOn)} THEN 2
    WHEN ${today} > ${overdueAfter} THEN 0
    WHEN ${today} >= ${dueOn} THEN 1
    WHEN ${soonDays}${soonFraction} THEN 3 ELSE 4 END`
  }
  const event = writeColumn('eventDate')
  const ranks = [
    ...(hasColumn('everyHours') ? [writeHoursRank(writeHours('lastHours'))] : []),
    ...(hasColumn('everyDistance') ? [writeDistanceRank(writeMeterDistance('lastDistance'))] : []),
    ...(hasColumn('everyMonths') || hasColumn('everyDays') ? [writePeriodRank()] : []),
    ...(hasColumn('eventDate')
      ? [`CASE WHEN ${event} <= ${today} AND (${from} IS NULL OR ${event} > ${from}) THEN 1 ELSE 5 END`]
      : []),
  ]
  // A function of one value would be an aggregate in SQLite; without any limit the verdict is `cannot tell`.
  const rank = ranks.length > 1 ? `${words.smallestOf}(\n  ${ranks.join(',\n  ')})` : (ranks[0] ?? '5')
  const verdict = `CASE ${rank}
  WHEN 0 THEN 'overdue' WHEN 1 THEN 'due' WHEN 3 THEN 'due soon' WHEN 4 THEN 'not due' ELSE 'cannot tell' END`
  if (query === undefined) return verdict
  requireKnownKeys('options.query', query, ['table', 'columns'])
  if (!Array.isArray(query.columns)) throw refuse('options.query.columns', query.columns, 'a list')
  const names = query.columns.map((name) => `${quoteName('options.query.columns', name)}, `)
  // Without OFFSET, PostgreSQL puts the expressions of a subquery back where they are used.
  const fence = dialect === 'postgresql' ? ' OFFSET 0' : ''
  const source = levels.reduce(
    (inner, expressions, level) =>
      `(SELECT *, ${expressions.join(', ')} FROM ${inner}${fence}) AS due_${level}`,
    quoteName('options.query.table', query.table),
  )
  return `SELECT ${names.join('')}${verdict} AS verdict FROM ${source}`
}
