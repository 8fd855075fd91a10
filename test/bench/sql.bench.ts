import { type DuckDBConnection, DuckDBInstance } from '@duckdb/node-api'
import { dueSql } from '../../src/v1/interval/fleet.js'

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

/** CPU time of the process in ms, the best of some runs. */
async function time(connection: DuckDBConnection, sql: string): Promise<number> {
  const before = process.cpuUsage()
  await connection.runAndReadAll(sql)
  const { user, system } = process.cpuUsage(before)
  return (user + system) / 1000
}

/** `DRIVETRAIN_SQL_ROWS=1000000,10000000` measures other sizes. */
export default async function run(): Promise<void> {
  const sizes = (process.env['DRIVETRAIN_SQL_ROWS'] ?? '1000000').split(',').map(Number)
  for (const rows of sizes) {
    const instance = await DuckDBInstance.create(':memory:')
    const connection = await instance.connect()
    await connection.run('SET threads = 1')
    await connection.run(TABLE(rows))
    const facts = { today: TODAY, soon: SOON, staleAfter: STALE_AFTER }
    const queries = [
      ['by hand', BY_HAND],
      ['dueSql, an expression', dueSql('duckdb', facts)],
      ['dueSql, a query', dueSql('duckdb', { ...facts, query: { table: 'fleet', columns: ['n'] } })],
    ] as const
    const best = queries.map(() => Number.POSITIVE_INFINITY)
    for (let turn = 0; turn < 5; turn++)
      for (const [at, [, verdict]] of queries.entries())
        best[at] = Math.min(best[at] ?? 0, await time(connection, COUNT(verdict)))
    const [byHand = 1] = best
    console.log(`DuckDB, ${rows} rows, one thread, CPU time`)
    for (const [at, [name, verdict]] of queries.entries()) {
      const ms = best[at] ?? 0
      const targetText =
        at === 0
          ? ''
          : `${(ms / byHand).toFixed(1)}× (goal 3×: ${ms / byHand <= 3 ? 'reached' : 'not reached'})`
      console.log(
        `${name.padEnd(34)} ${ms.toFixed(0).padStart(7)} ms  ${verdict.length} characters  ${targetText}`,
      )
      const { length } = (await connection.runAndReadAll(COUNT(verdict))).getRows()
      if (length < 4) throw new Error('the table has too few verdicts to compare')
    }
    connection.closeSync()
  }
}
