import { refuse, requireKnownKeys, requireObject } from '../base/index.js'
import { type DateText, readDay } from '../calendar/index.js'
import {
  countsPerUnit,
  MAX_METER_COUNT,
  MAX_PER_DAY,
  type MeterUnit,
  meterCount,
  PRODUCT_ERROR,
} from './meterCount.js'
import { COMMON_SYNTAX, SQL_SYNTAX, type SqlDialect, type SqlSyntax } from './sqlSyntax.js'

const OPTION_KEYS = ['today', 'unit', 'readings', 'services', 'columns']
const READING_COLUMNS = ['machine', 'date', 'value', 'newValue', 'rollover', 'position'] as const
const SERVICE_COLUMNS = ['machine', 'lastDate', 'lastReading', 'neverServiced'] as const
/** Columns that a table may lack. */
const OPTIONAL_COLUMNS: readonly string[] = ['rollover', 'position', 'lastReading', 'neverServiced']

export interface MeterSqlOptions {
  readonly today: DateText
  /** The meter: hours, or a distance in this unit. All values of the tables are in it. */
  readonly unit: MeterUnit
  /** The table (or view) of readings and changes of the meter. */
  readonly readings: string
  /** The table of services, and those of its columns that the result repeats. Absent: one row for each machine. */
  readonly services?: { readonly table: string; readonly columns: readonly string[] }
  /** Column names that differ from the names in the table above. Null: the tables have no such column. */
  readonly columns?: {
    readonly [Name in 'machine' | 'date' | 'value' | 'newValue' | 'lastDate']?: string
  } & { readonly [Name in 'rollover' | 'position' | 'lastReading' | 'neverServiced']?: string | null }
}

/** What the three dialects write differently for lists, which hold the readings of a day on which a meter was changed. */
interface ListSyntax {
  readonly collect: (values: string) => string
  /** The items, named `x`, that fulfil a condition. */
  readonly filter: (list: string, condition: string) => string
  /** Null for an empty list. */
  readonly largest: (list: string) => string
  /** An empty list instead of null. */
  readonly orEmpty: (list: string) => string
  readonly integerType: string
}

type ListDialect = Exclude<SqlDialect, 'sqlite'>

/**
 * Writes a query that adds up the readings of a meter over swaps, resets and rollovers, as {@link readMeters} does, for a fleet in a
 * database: the total now of each machine, or of each service also the total at the last service. {@link dueSql} reads its
 * columns.
 *
 * total = shown + the counts of earlier displays; a display that rolls over adds its `rollover` limit and one unit of its last
 * digit
 *
 * @param dialect - `postgresql`, `duckdb` or `clickhouse`; SQLite has no lists
 * @param options - today, the unit, and the tables. Columns of `readings`: `machine`; `date`; `value`, what the display
 *   showed (null for a rollover); `new_value`, null for a reading, otherwise what the display showed after the change (0 for a reset
 *   or rollover); `rollover`, the highest value of the display; `position`, the order of changes on one day. Columns of
 *   `services`: `machine`; `last_date`; `last_reading`, what the display showed at the service (otherwise the smallest
 *   reading of that day counts); `never_serviced`, true if `last_date` is the date of first use. The tables may lack the last two of
 *   each; names are quoted
 * @returns a query with the columns `machine`, `hours`, `hours_date` and `hours_breaks` (unexplained falls and jumps; the total
 *   counts from the last one). With `services`: the columns named there, `last_hours` (null if unknown or before a
 *   break), `hours` and `hours_date`. For a distance `distance` instead of `hours`, and `distance_unit`
 * @throws TypeError, RangeError if an option is out of range
 *
 * Source: house rule, as for `readMeters` (the same totals by test).
 *
 * @example
 * ```ts
 * // Which columns does the query for hour meters have?
 * import { meterSql } from 'drivetrain-service/v1/interval/fleet'
 * const sql = meterSql('duckdb', { today: '2031-10-06', unit: 'h', readings: 'hour_readings' })
 * sql.match(/AS (hours\w*)/g) // => ['AS hours', 'AS hours_date', 'AS hours_breaks']
 * ```
 */
export function meterSql(dialect: ListDialect, options: MeterSqlOptions): string {
  if (typeof dialect !== 'string' || !Object.hasOwn(LIST_SYNTAX, dialect))
    throw refuse('dialect', dialect, "'postgresql', 'duckdb' or 'clickhouse'", 'string')
  const lists = LIST_SYNTAX[dialect]
  requireObject('options', options)
  requireKnownKeys('options', options, OPTION_KEYS)
  const { today, unit, readings, services, columns = {} } = options
  readDay(today, 'options.today')
  if (unit !== 'h' && unit !== 'km' && unit !== 'mi')
    throw refuse('options.unit', unit, "'h', 'km' or 'mi'", 'string')
  requireKnownKeys('options.columns', columns, [...READING_COLUMNS, ...SERVICE_COLUMNS])
  const syntax: SqlSyntax = { ...COMMON_SYNTAX, ...SQL_SYNTAX[dialect] }
  const { doubleType, floor, daysBetween } = syntax
  const quote = (argument: string, name: unknown): string => {
    if (typeof name !== 'string' || name.trim() === '') throw refuse(argument, name, 'a name', 'string')
    return syntax.quoteName(name)
  }
  /** A column of a table; undefined if the table has none. */
  const column = (name: (typeof READING_COLUMNS | typeof SERVICE_COLUMNS)[number]): string | undefined => {
    const given = Object.hasOwn(columns, name) ? columns[name] : undefined
    if (given === null && OPTIONAL_COLUMNS.includes(name)) return undefined
    const usual = name.replace(/[A-Z]/g, (letter) => `_${letter.toLowerCase()}`)
    return quote(`options.columns.${name}`, given === undefined ? usual : given)
  }
  const number = (value: number): string => `CAST(${value} AS ${doubleType})`
  const meter = unit === 'h' ? 'hours' : 'distance'
  const perUnit = number(countsPerUnit(unit))
  const product = (value: string): string => `CAST(${value} AS ${doubleType}) * ${perUnit}`
  /** Rounds half up to whole counts, with the same operations as `meterCount`. */
  const round = (counts: string): string => {
    const half = unit === 'h' ? `${number(0.5)} - ${counts} * ${number(PRODUCT_ERROR)}` : number(0.5)
    return `${floor(counts)} + CASE WHEN ${counts} - ${floor(counts)} >= ${half} THEN 1 ELSE 0 END`
  }
  const rollover = column('rollover')
  const position = column('position') ?? '0'
  const nothing = `CAST(NULL AS ${doubleType})`
  const isReading = 'new_shown IS NULL'
  // The readings of a machine in the order of the display: those before its first change, the change, and so on.
  const inOrder = `PARTITION BY machine ORDER BY segment, CASE WHEN ${isReading} THEN 0 ELSE 1 END, day, shown`
  // Readings that repeat have no order of their own: the second pass keeps that of the first.
  const byNumber = 'PARTITION BY machine ORDER BY n'
  const toHere = 'ROWS BETWEEN UNBOUNDED PRECEDING AND CURRENT ROW'
  // A change first, then the readings of its day.
  const byDay = `PARTITION BY machine ORDER BY day, CASE WHEN ${isReading} THEN 1 ELSE 0 END, CASE WHEN ${isReading} THEN 0 ELSE place END, shown`
  const changed = `(SELECT machine FROM meter_items WHERE NOT ${isReading})`
  /** The old display can have shown a reading `x` of the day of its change. */
  const isBefore = (x: string, low: string, change: string): string =>
    `(${x} >= ${low} AND (${change} IS NULL OR ${x} <= ${change}))`
  const fitsRollover = 'coalesce(rise + limit_counts <= largest_rise, false)'
  const parts = [
    `meter_raw AS (SELECT ${column('machine')} AS machine, CAST(${column('date')} AS ${syntax.dateType}) AS day, ${product(`${column('value')}`)} AS raw,
      ${product(`${column('newValue')}`)} AS new_raw, ${position} AS place, ${rollover ? `CAST(${rollover} AS ${doubleType})` : nothing} AS highest
      FROM ${quote('options.readings', readings)} WHERE ${column('machine')} IS NOT NULL AND ${column('date')} <= ${syntax.date(today)})`,
    `meter_items AS (SELECT machine, day, shown, new_shown, place, modulus FROM (SELECT machine, day, ${round('raw')} AS shown, ${round('new_raw')} AS new_shown, place,
      ${rollover ? writeModulus() : nothing} AS modulus FROM meter_raw) AS meter_counted
      WHERE NOT ${isReading} OR (shown >= 0 AND shown <= ${number(MAX_METER_COUNT[meter])}))`,
    `meter_days AS (SELECT machine, day, shown, new_shown, place, modulus, lag(day) OVER (${byDay}) AS prior_day, lag(shown) OVER (${byDay}) AS prior_shown,
      CAST(sum(CASE WHEN ${isReading} THEN 0 ELSE 1 END) OVER (${byDay} ${toHere}) AS ${lists.integerType}) AS changes
      FROM meter_items WHERE machine IN ${changed})`,
    `meter_lists AS (SELECT machine, day, ${lists.collect('shown')} AS list FROM meter_days
      WHERE ${isReading} AND (machine, day) IN (SELECT machine, day FROM meter_days WHERE NOT ${isReading}) GROUP BY machine, day)`,
    `meter_changes AS (SELECT c.machine AS machine, c.day AS day, c.shown AS shown, c.new_shown AS new_shown, c.changes AS number,
      c.prior_day AS prior_day, c.prior_shown AS prior_shown, ${lists.orEmpty('l.list')} AS list
      FROM meter_days AS c LEFT JOIN meter_lists AS l ON l.machine = c.machine AND l.day = c.day WHERE NOT c.${isReading})`,
    // `low`: the display before the change. `rest`: readings of the day that the old display did not show.
    `meter_walk AS (SELECT machine, number, day, shown, new_shown, low, ${lists.filter('list', `NOT ${isBefore('x', 'low', 'shown')}`)} AS rest
      FROM (SELECT machine, number, day, shown, new_shown, coalesce(prior_shown, ${number(0)}) AS low, list FROM meter_changes WHERE number = 1) AS first
      UNION ALL SELECT machine, number, day, shown, new_shown, low, ${lists.filter('list', `NOT ${isBefore('x', 'low', 'shown')}`)} AS rest
      FROM (SELECT c.machine AS machine, c.number AS number, c.day AS day, c.shown AS shown, c.new_shown AS new_shown,
        CASE WHEN c.day = w.day THEN w.new_shown WHEN c.prior_day > w.day THEN c.prior_shown ELSE coalesce(${lists.largest('w.rest')}, w.new_shown) END AS low,
        CASE WHEN c.day = w.day THEN w.rest ELSE c.list END AS list
        FROM meter_walk AS w INNER JOIN meter_changes AS c ON c.machine = w.machine AND c.number = w.number + 1) AS next)`,
    `meter_before AS (SELECT r.machine AS machine, r.day AS day, r.shown AS shown, CAST(min(w.number) - 1 AS ${lists.integerType}) AS segment FROM meter_days AS r
      INNER JOIN meter_walk AS w ON w.machine = r.machine AND w.day = r.day
      WHERE r.${isReading} AND ${isBefore('r.shown', 'w.low', 'w.shown')} GROUP BY r.machine, r.day, r.shown)`,
    `meter_placed AS (SELECT machine, day, shown, new_shown, modulus, 0 AS segment FROM meter_items WHERE machine NOT IN ${changed}
      UNION ALL SELECT d.machine, d.day, d.shown, d.new_shown, d.modulus, CASE WHEN NOT d.${isReading} THEN d.changes - 1 ELSE coalesce(b.segment, d.changes) END
      FROM meter_days AS d LEFT JOIN meter_before AS b ON b.machine = d.machine AND b.day = d.day AND b.shown = d.shown)`,
    `meter_steps AS (SELECT machine, day, shown, new_shown, segment, lead(day) OVER (${inOrder}) AS next_day, row_number() OVER (${inOrder}) AS n,
      shown - lag(coalesce(new_shown, shown)) OVER (${inOrder}) AS rise,
      (${daysBetween(`lag(day) OVER (${inOrder})`, 'day')} + 1) * ${number(MAX_PER_DAY[meter])} AS largest_rise,
      ${rollover ? 'max(modulus) OVER (PARTITION BY machine)' : nothing} AS limit_counts FROM meter_placed)`,
    `meter_totals AS (SELECT machine, day, shown, new_shown, n, next_day IS NULL AS is_newest, coalesce(new_shown, shown)
        + sum(CASE WHEN rise < 0 AND ${fitsRollover} THEN limit_counts ELSE 0 END + CASE WHEN ${isReading} THEN 0 ELSE coalesce(shown - new_shown, limit_counts, 0) END) OVER (${byNumber} ${toHere}) AS counts,
      sum(CASE WHEN (rise < 0 AND NOT ${fitsRollover}) OR rise > largest_rise OR (NOT ${isReading} AND shown IS NULL AND limit_counts IS NULL) THEN 1 ELSE 0 END) OVER (${byNumber} ${toHere}) AS breaks
      FROM meter_steps)`,
  ]
  const unitColumn = unit === 'h' ? '' : `, '${unit}' AS distance_unit`
  const write = (extra: readonly string[], select: string): string =>
    `WITH RECURSIVE ${[...parts, ...extra].join(',\n')}\n${select}`
  if (services === undefined)
    return write(
      [],
      `SELECT machine, counts / ${perUnit} AS ${meter}, day AS ${meter}_date, breaks AS ${meter}_breaks${unitColumn} FROM meter_totals WHERE is_newest`,
    )
  requireKnownKeys('options.services', services, ['table', 'columns'])
  if (!Array.isArray(services.columns)) throw refuse('options.services.columns', services.columns, 'a list')
  const table = quote('options.services.table', services.table)
  const names = services.columns.map(
    (name) => `s.${quote('options.services.columns', name)} AS ${quote('options.services.columns', name)}, `,
  )
  const lastReading = column('lastReading')
  const lastCounts = lastReading ? `coalesce(${round(`(${product(`s.${lastReading}`)})`)}, -1)` : number(-1)
  const neverServiced = column('neverServiced')
  const atFirstUse = neverServiced
    ? `WHEN s.${neverServiced} THEN CASE WHEN m.breaks = 0 AND m.counts IS NOT NULL THEN ${number(0)} END `
    : ''
  return write(
    [
      `meter_starts AS (SELECT DISTINCT s.${column('machine')} AS machine, s.${column('lastDate')} AS day, ${lastCounts} AS display FROM ${table} AS s)`,
      // The reading of the service itself, otherwise the smallest of its day.
      `meter_found AS (SELECT machine, day, display, counts, breaks FROM (SELECT t.machine AS machine, t.day AS day, q.display AS display, t.counts AS counts, t.breaks AS breaks,
        row_number() OVER (PARTITION BY t.machine, t.day, q.display ORDER BY CASE WHEN t.${isReading} AND t.shown = q.display THEN 0 ELSE 1 END, t.n) AS choice
        FROM meter_totals AS t INNER JOIN meter_starts AS q ON q.machine = t.machine AND q.day = t.day WHERE t.${isReading} OR t.is_newest) AS meter_choices WHERE choice = 1)`,
    ],
    `SELECT ${names.join('')}CASE ${atFirstUse}WHEN f.breaks = m.breaks THEN f.counts / ${perUnit} END AS last_${meter},
      m.counts / ${perUnit} AS ${meter}, m.day AS ${meter}_date${unitColumn} FROM ${table} AS s
      LEFT JOIN (SELECT machine, day, counts, breaks FROM meter_totals WHERE is_newest) AS m ON m.machine = s.${column('machine')}
      LEFT JOIN meter_found AS f ON f.machine = s.${column('machine')} AND f.day = s.${column('lastDate')} AND f.display = ${lastCounts}`,
  )

  /** The counts at which a display starts again from zero: one unit of the last digit of its limit above it. */
  function writeModulus(): string {
    // Nine decimals of a kilometre or mile, and three of an hour, are at least one count.
    const decimals = Array.from({ length: unit === 'h' ? 4 : 10 }, (_, digits) => digits)
    const lastDigit = decimals
      .map((digits) => {
        const scale = number(10 ** digits)
        const scaled = `${floor(`highest * ${scale} + ${number(0.5)}`)} / ${scale}`
        return `WHEN ${scaled} = highest THEN ${number(meterCount(10 ** -digits, unit))}`
      })
      .join(' ')
    return `${round(`(highest * ${perUnit})`)} + CASE ${lastDigit} WHEN highest IS NULL THEN NULL ELSE 0 END`
  }
}

const LIST_SYNTAX: Readonly<Record<ListDialect, ListSyntax>> = {
  postgresql: {
    collect: (values) => `array_agg(${values})`,
    filter: (list, condition) => `ARRAY(SELECT x FROM unnest(${list}) AS items(x) WHERE ${condition})`,
    largest: (list) => `(SELECT max(x) FROM unnest(${list}) AS items(x))`,
    orEmpty: (list) => `coalesce(${list}, CAST(ARRAY[] AS double precision[]))`,
    integerType: 'bigint',
  },
  duckdb: {
    collect: (values) => `list(${values})`,
    filter: (list, condition) => `list_filter(${list}, lambda x: ${condition})`,
    largest: (list) => `list_max(${list})`,
    orEmpty: (list) => `coalesce(${list}, CAST([] AS double[]))`,
    integerType: 'bigint',
  },
  clickhouse: {
    collect: (values) => `groupArray(assumeNotNull(${values}))`,
    filter: (list, condition) => `arrayFilter(x -> coalesce(${condition}, true), ${list})`,
    largest: (list) => `if(empty(${list}), NULL, arrayMax(${list}))`,
    // A join without a match gives an empty list.
    orEmpty: (list) => list,
    integerType: 'Nullable(Int64)',
  },
}
