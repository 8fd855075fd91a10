import { type DuckDBConnection, DuckDBInstance } from '@duckdb/node-api'
import { dueSql } from '../../src/v1/interval/fleet.js'
import type { BenchResult, BenchRow, SizeRow } from './benchResult.js'
import { measureInTurns } from './measureInTurns.js'

const TODAY = '2031-10-06'
const SOON = { hours: 20, days: 30 }
const STALE_AFTER = { days: 30 }
/** What one writes by hand for the same columns and the same verdicts: exact counts, bad readings, window, month ends. */
const BY_HAND = `CASE
  WHEN last_date IS NULL OR last_hours IS NULL OR coalesce(hours, last_hours) < last_hours THEN 'cannot tell'
  WHEN round(coalesce(hours, last_hours) * 1000) > round((last_hours + every_hours + coalesce(window_hours, 0)) * 1000)
    OR DATE '${TODAY}' > last_date + to_months(every_months) THEN 'overdue'
  WHEN round(coalesce(hours, last_hours) * 1000) >= round((last_hours + every_hours) * 1000)
    OR DATE '${TODAY}' >= last_date + to_months(every_months) THEN 'due'
  WHEN DATE '${TODAY}' - coalesce(hours_date, last_date) > 30 THEN 'cannot tell'
  WHEN round(coalesce(hours, last_hours) * 1000) >= round((last_hours + every_hours - 20) * 1000)
    OR last_date + to_months(every_months) <= DATE '${TODAY}' + 30 THEN 'due soon'
  ELSE 'not due' END`

const TABLE = (rows: number) => `CREATE TABLE fleet AS SELECT
  i AS n, DATE '2031-10-06' - CAST(hash(i) % 500 AS integer) AS last_date,
  CAST(hash(i * 3) % 9000 AS double) AS last_hours,
  last_hours + CAST(hash(i * 5) % 300 AS double) + 0.5 AS hours,
  DATE '2031-10-06' - CAST(least(hash(i) % 500, hash(i * 7) % 40) AS integer) AS hours_date,
  CAST(250 AS double) AS every_hours, CAST(CASE WHEN i % 2 = 0 THEN 25 END AS double) AS window_hours,
  CAST(12 AS integer) AS every_months,
  CAST(NULL AS double) AS last_distance, CAST(NULL AS double) AS distance, CAST(NULL AS date) AS distance_date,
  CAST(NULL AS text) AS distance_unit, CAST(NULL AS double) AS every_distance, CAST(NULL AS text) AS every_distance_unit,
  CAST(NULL AS double) AS window_distance, CAST(NULL AS integer) AS every_days, CAST(NULL AS integer) AS window_months,
  CAST(NULL AS integer) AS window_days, CAST(NULL AS date) AS event_date, CAST(NULL AS boolean) AS no_hour_meter,
  CAST(NULL AS boolean) AS no_odometer
  FROM range(${rows}) AS t(i)`

const COUNT = (sql: string) => {
  const query = sql.startsWith('SELECT') ? sql : `SELECT ${sql} AS verdict FROM fleet`
  return `SELECT verdict, count(*) FROM (${query}) GROUP BY 1 ORDER BY 1`
}

/** The size that is compared; at the others only the growth is measured. */
const COMPARED = 1_000_000
const SIZES = [10_000, 100_000, COMPARED]
const HEAVY_SIZES = [10_000_000]

/** One thread, so that CPU time is the work and not the waiting of threads for each other. */
async function openTable(rows: number): Promise<DuckDBConnection> {
  const instance = await DuckDBInstance.create(':memory:')
  const connection = await instance.connect()
  await connection.run('SET threads = 1')
  await connection.run(TABLE(rows))
  return connection
}

export default async function run({ heavy }: { readonly heavy: boolean }): Promise<BenchResult> {
  const rows: BenchRow[] = []
  const growth: SizeRow[] = []
  const facts = { today: TODAY, soon: SOON, staleAfter: STALE_AFTER }
  const queries = {
    hand: BY_HAND,
    expression: dueSql('duckdb', facts),
    query: dueSql('duckdb', { ...facts, query: { table: 'fleet', columns: ['n'] } }),
  }
  for (const size of heavy ? HEAVY_SIZES : SIZES) {
    const connection = await openTable(size)
    for (const sql of Object.values(queries)) {
      const { length } = (await connection.runAndReadAll(COUNT(sql))).getRows()
      if (length < 4) throw new Error('the table has too few verdicts to compare')
    }
    const read = (sql: string) => () => connection.runAndReadAll(COUNT(sql))
    const times = await measureInTurns(
      { hand: read(queries.hand), expression: read(queries.expression), query: read(queries.query) },
      { rounds: heavy ? 3 : 7, roundMs: 1, warmUpMs: 0 },
    )
    if (size === COMPARED) {
      const peer = { name: 'a rule by hand', times: times.hand }
      const what = `in DuckDB, ${size.toLocaleString('en')} rows`
      rows.push(
        { what: `dueSql, a query ${what}`, times: times.query, peer, goal: 3 },
        { what: `dueSql, an expression ${what}`, times: times.expression, peer, goal: 3 },
      )
    }
    for (const name of ['hand', 'query'] as const)
      growth.push({
        what: name === 'hand' ? 'SQL by hand in DuckDB' : 'dueSql, a query in DuckDB',
        item: 'row',
        sizes: [[size, Math.min(...times[name]) / size]],
      })
    connection.closeSync()
  }
  return { rows, growth }
}
