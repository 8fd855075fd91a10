import { readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { DuckDBInstance } from '@duckdb/node-api'
import { dueSql } from 'drivetrain-service/v1/interval/fleet'
import { listDueRows } from 'drivetrain-service/v1/service'
import { parseMachineLog, parseSpecSheet } from 'drivetrain-service/v1/spec'

const TODAY = '2023-10-06'
const OPTIONS = { soon: { hours: 20, days: 30 }, staleAfter: { days: 30 } }
/** The columns of docs/sql.md, by their type in DuckDB. */
const COLUMNS = {
  date: 'last_date hours_date distance_date event_date',
  double: 'last_hours hours every_hours window_hours last_distance distance every_distance window_distance',
  text: 'distance_unit every_distance_unit',
  integer: 'every_months every_days window_months window_days',
  boolean: 'no_hour_meter no_odometer',
}
const columns = Object.entries(COLUMNS).flatMap(([type, names]) =>
  names.split(' ').map((name) => ({ name, type, field: name.replace(/_./g, (end) => end[1].toUpperCase()) })),
)

const { resolve } = createRequire(import.meta.url)
const read = (name, parse) => {
  const text = readFileSync(
    resolve(`drivetrain-service/schemas/v1/vectors/bases/tind-4/${name}.json`),
    'utf8',
  )
  const parsed = parse(JSON.parse(text))
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.findings, null, 2))
  return parsed.value
}
const sheet = read('sheet', parseSpecSheet)
const example = read('log', parseMachineLog)

/** Machines that differ in the day and hours of their last reading; the first was not read for two months. */
const LAST_READINGS = [
  ['2023-07-30', 440],
  ...[460, 475, 490, 500, 512.6, 550].map((value) => ['2023-10-04', value]),
]
const fleet = LAST_READINGS.map(([date, value], place) => {
  const { hours, distance } = example.meters
  const readings = [...hours.readings.slice(0, -1), { date, value }]
  return { ...example, id: `station-${place + 1}`, meters: { hours: { ...hours, readings }, distance } }
})

const connection = await (await DuckDBInstance.create(':memory:')).connect()
const types = columns.map(({ name, type }) => `${name} ${type}`)
await connection.run(`CREATE TABLE fleet (machine text, service text, gearcase text, ${types})`)
const insert = `INSERT INTO fleet VALUES (?, ?, ?${', ?'.repeat(columns.length)})`
for (const log of fleet)
  for (const row of listDueRows({ sheet, log, today: TODAY }, { ...OPTIONS, severity: 'normal' })) {
    // The id is a JSON Pointer: machine, service, gearcase.
    const names = row.id.split('/').slice(1, 4)
    await connection.run(insert, [...names, ...columns.map(({ field }) => row[field] ?? null)])
  }

const query = dueSql('duckdb', {
  ...OPTIONS,
  today: TODAY,
  query: { table: 'fleet', columns: ['machine', 'service', 'gearcase'] },
})
const reader = await connection.runAndReadAll(
  `SELECT verdict, machine, service, string_agg(gearcase, ', ' ORDER BY gearcase) AS gearcases
  FROM (${query}) GROUP BY verdict, machine, service
  ORDER BY list_position(['overdue', 'due', 'cannot tell', 'due soon', 'not due'], verdict), machine, service`,
)
console.table(reader.getRowObjectsJson())
connection.closeSync()
