import { createRequire } from 'node:module'
import { join } from 'node:path'
import { DuckDBInstance } from '@duckdb/node-api'
import { dueSql, meterSql } from '../../src/v1/interval/fleet.js'

// The cost of dueSql and meterSql in DuckDB and ClickHouse, beside what one writes by hand. Not a test:
// node test/support/run.mjs test/engines/measureSql.ts <folder with chdb> 1000000,10000000
// All on one thread, the best of three runs in turn, CPU time of the process.

const [folder = '', sizes = '1000000'] = process.argv.slice(2)
const TODAY = '2031-10-06'
const DUE = { today: TODAY, soon: { hours: 20, days: 30 }, staleAfter: { days: 30 } }
const ABSENT = [
  ...[
    'lastDistance',
    'distance',
    'distanceDate',
    'distanceUnit',
    'everyDistance',
    'everyDistanceUnit',
    'windowDistance',
  ],
  ...['everyDays', 'windowMonths', 'windowDays', 'eventDate', 'noHourMeter', 'noOdometer'],
]
const columns = Object.fromEntries(ABSENT.map((name) => [name, null]))

interface Words {
  readonly today: string
  readonly addMonths: (date: string) => string
  readonly days: (from: string, to: string) => string
  readonly lessDays: (count: string) => string
  readonly numbers: (count: number) => string
  readonly random: (factor: number, below: number) => string
  readonly double: string
  readonly engine: string
}

const DUCK: Words = {
  today: `DATE '${TODAY}'`,
  addMonths: (date) => `CAST(${date} + to_months(every_months) AS date)`,
  days: (from, to) => `${to} - ${from}`,
  lessDays: (count) => `DATE '${TODAY}' - CAST(${count} AS integer)`,
  numbers: (count) => `(SELECT range AS i FROM range(${count})) AS t`,
  random: (factor, below) => `hash(i * ${factor}) % ${below}`,
  double: 'double',
  engine: '',
}
const CLICKHOUSE: Words = {
  today: `toDate32('${TODAY}')`,
  addMonths: (date) => `addMonths(${date}, every_months)`,
  days: (from, to) => `dateDiff('day', ${from}, ${to})`,
  lessDays: (count) => `toDate32('${TODAY}') - toIntervalDay(${count})`,
  numbers: (count) => `(SELECT number AS i FROM numbers(${count})) AS t`,
  random: (factor, below) => `cityHash64(i * ${factor}) % ${below}`,
  double: 'Nullable(Float64)',
  engine: ' ENGINE = MergeTree ORDER BY tuple()',
}

/** The same columns and the same verdicts, by hand. */
const writeByHand = ({ today, addMonths, days }: Words): string => {
  const now = 'round(coalesce(hours, last_hours) * 1000)'
  const due = addMonths('last_date')
  return `SELECT n, CASE
  WHEN last_date IS NULL OR last_hours IS NULL OR coalesce(hours, last_hours) < last_hours THEN 'cannot tell'
  WHEN ${now} > round((last_hours + every_hours + coalesce(window_hours, 0)) * 1000) OR ${today} > ${due} THEN 'overdue'
  WHEN ${now} >= round((last_hours + every_hours) * 1000) OR ${today} >= ${due} THEN 'due'
  WHEN ${days('coalesce(hours_date, last_date)', today)} > 30 THEN 'cannot tell'
  WHEN ${now} >= round((last_hours + every_hours - 20) * 1000) OR ${days(today, due)} <= 30 THEN 'due soon'
  ELSE 'not due' END AS verdict FROM fleet`
}

const writeTables = (words: Words, rows: number): readonly string[] => {
  const { lessDays, numbers, random, double, engine } = words
  return [
    'DROP TABLE IF EXISTS fleet',
    'DROP TABLE IF EXISTS readings',
    `CREATE TABLE fleet${engine} AS SELECT i AS n, ${lessDays(random(1, 500))} AS last_date,
      CAST(${random(3, 9000)} AS ${double}) AS last_hours, CAST(${random(3, 9000)} + ${random(5, 300)} + 0.5 AS ${double}) AS hours,
      ${lessDays(`least(${random(1, 500)}, ${random(7, 40)})`)} AS hours_date, CAST(250 AS ${double}) AS every_hours,
      CAST(CASE WHEN i % 2 = 0 THEN 25 END AS ${double}) AS window_hours, 12 AS every_months FROM ${numbers(rows)}`,
    // Ten readings a machine, a month apart; one machine of fifty has its meter swapped.
    `CREATE TABLE readings${engine} AS SELECT i % ${rows / 10} AS machine, ${lessDays(`(9 - floor(i / ${rows / 10})) * 30`)} AS date,
      CAST(floor(i / ${rows / 10}) * 50 + ${random(3, 50)} AS ${double}) AS value,
      CAST(CASE WHEN i % 50 = 0 AND floor(i / ${rows / 10}) = 5 THEN 250 END AS ${double}) AS new_value FROM ${numbers(rows)}`,
  ]
}

const writeQueries = (dialect: 'duckdb' | 'clickhouse', words: Words) =>
  [
    ['a CASE by hand', writeByHand(words), ''],
    [
      'dueSql, a query',
      dueSql(dialect, { ...DUE, columns, query: { table: 'fleet', columns: ['n'] } }),
      'a CASE by hand',
    ],
    // Swaps without readings of their day, no falls, no jumps.
    [
      'a window by hand',
      `SELECT machine, max(hours) AS verdict FROM (SELECT machine, coalesce(new_value, value) + coalesce(sum(value - new_value) OVER
        (PARTITION BY machine ORDER BY date ROWS BETWEEN UNBOUNDED PRECEDING AND CURRENT ROW), 0) AS hours FROM readings) AS t GROUP BY machine`,
      '',
    ],
    [
      'meterSql',
      `SELECT machine, hours AS verdict FROM (${meterSql(dialect, { today: TODAY, unit: 'h', readings: 'readings', columns: { rollover: null, position: null } })}) AS t`,
      'a window by hand',
    ],
  ] as const

const { Session } = createRequire(join(folder, 'package.json'))('chdb') as {
  readonly Session: new () => { query: (sql: string, format?: string) => string; cleanup: () => void }
}
const duck = await (await DuckDBInstance.create(':memory:')).connect()
await duck.run('SET threads = 1')
const house = new Session()
house.query('CREATE DATABASE fleets ENGINE = Atomic')
house.query('USE fleets')
house.query('SET max_threads = 1')
const ENGINES = [
  ['DuckDB', 'duckdb', DUCK, async (sql: string) => String((await duck.runAndReadAll(sql)).getRows())],
  ['ClickHouse', 'clickhouse', CLICKHOUSE, async (sql: string) => house.query(sql, 'TabSeparated').trim()],
] as const

console.log('| engine | rows | query | CPU s | ratio | memory, MB |\n| --- | --- | --- | --- | --- | --- |')
for (const rows of sizes.split(',').map(Number))
  for (const [engine, dialect, words, run] of ENGINES) {
    for (const statement of writeTables(words, rows)) await run(statement)
    const queries = writeQueries(dialect, words)
    const best = new Map<string, number>()
    const answers = new Map<string, string>()
    for (let turn = 0; turn < (rows > 20_000_000 ? 1 : 3); turn++)
      for (const [name, sql] of queries) {
        const before = process.cpuUsage()
        answers.set(
          name,
          await run(
            `SELECT count(*), sum(length(CAST(verdict AS ${dialect === 'duckdb' ? 'text' : 'String'}))) FROM (${sql}) AS all_rows`,
          ),
        )
        const { user, system } = process.cpuUsage(before)
        best.set(name, Math.min(best.get(name) ?? Number.POSITIVE_INFINITY, (user + system) / 1e6))
      }
    for (const [name, , peer] of queries) {
      const seconds = best.get(name) ?? 0
      const ratio = peer === '' ? '1' : (seconds / (best.get(peer) ?? 1)).toFixed(1)
      const memory = Math.round(process.memoryUsage().rss / 1e6)
      console.log(
        `| ${engine} | ${rows.toLocaleString('en')} | ${name} | ${seconds.toFixed(2)} | ${ratio} | ${memory} |`,
      )
      if (peer !== '' && answers.get(name)?.split(/[,\t]/)[0] !== answers.get(peer)?.split(/[,\t]/)[0])
        throw new Error(`${name}: ${answers.get(name)}, ${peer}: ${answers.get(peer)}`)
    }
    for (const table of ['fleet', 'readings']) await run(`DROP TABLE ${table}`)
  }
house.cleanup()
