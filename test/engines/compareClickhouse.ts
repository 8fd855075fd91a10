import { createRequire } from 'node:module'
import { join } from 'node:path'
import {
  computeDueColumns,
  createDueColumns,
  DUE_STATES,
  dueSql,
  meterSql,
  writeDueRow,
} from '../../src/v1/interval/fleet.js'
import { drawRows, OPTION_SETS } from '../interval/support/dueCases.js'
import { expectTotals, meterTables, randomLogs } from '../interval/support/randomMeters.js'
import { TODAY } from '../interval/support/randomRows.js'

// Compares the verdicts of ClickHouse, embedded by chdb, with those of computeDueColumns; run by `npm run test:engines`.

const [folder = ''] = process.argv.slice(2)
const { Session } = createRequire(join(folder, 'package.json'))('chdb') as {
  readonly Session: new () => { query: (sql: string, format?: string) => string; cleanup: () => void }
}

const ROWS = 20_000
const TYPES = {
  Date32: ['lastDate', 'hoursDate', 'distanceDate', 'eventDate'],
  Float64: [
    'lastHours',
    'lastDistance',
    'hours',
    'distance',
    'everyHours',
    'everyDistance',
    'windowHours',
    'windowDistance',
  ],
  String: ['distanceUnit', 'everyDistanceUnit'],
  Int32: ['everyMonths', 'everyDays', 'windowMonths', 'windowDays'],
  Bool: ['noHourMeter', 'noOdometer'],
} as const
const FIELDS = Object.entries(TYPES).flatMap(([type, names]) => names.map((name) => [name, type] as const))
const snake = (field: string) => field.replace(/[A-Z]/g, (letter) => `_${letter.toLowerCase()}`)
const literal = (value: unknown) =>
  value === undefined || value === null ? 'NULL' : typeof value === 'string' ? `'${value}'` : String(value)

const rows = drawRows(ROWS)
const columns = createDueColumns(ROWS)
for (const [index, row] of rows.entries()) writeDueRow(columns, index, row)

const session = new Session()
session.query('CREATE DATABASE fleets ENGINE = Atomic')
const fields = FIELDS.map(([name, type]) => `${snake(name)} Nullable(${type})`).join(', ')
session.query(`CREATE TABLE fleets.fleet (n Int32, ${fields}) ENGINE = MergeTree ORDER BY n`)
for (let start = 0; start < ROWS; start += 1000) {
  const values = rows
    .slice(start, start + 1000)
    .map((row, index) => `(${start + index}, ${FIELDS.map(([name]) => literal(row[name])).join(', ')})`)
  session.query(`INSERT INTO fleets.fleet VALUES ${values.join(', ')}`)
}
session.query('USE fleets')

let differences = 0
let compared = 0
for (const options of OPTION_SETS) {
  const { verdict } = computeDueColumns(columns, TODAY, options)
  const facts = { ...options, today: TODAY }
  for (const sql of [
    `SELECT n, ${dueSql('clickhouse', facts)} AS verdict FROM fleet ORDER BY n`,
    `${dueSql('clickhouse', { ...facts, query: { table: 'fleet', columns: ['n'] } })} ORDER BY n`,
  ]) {
    const answers = session.query(sql, 'TabSeparated').trimEnd().split('\n')
    if (answers.length !== ROWS) throw new Error(`expected ${ROWS} rows, found ${answers.length}`)
    for (const [index, line] of answers.entries()) {
      const expected = DUE_STATES[verdict[index] ?? 2]
      compared += 1
      if (line.split('\t')[1] === expected) continue
      differences += 1
      if (differences <= 5) console.log(JSON.stringify({ row: rows[index], clickhouse: line, expected }))
    }
  }
}
console.log(`ClickHouse: ${compared} verdicts compared, ${differences} differ`)

// The totals of machines whose meters were changed, for each machine and each service.
const METER_TYPES = {
  double: 'Nullable(Float64)',
  date: 'Date32',
  integer: 'Nullable(Int32)',
  boolean: 'Bool',
  engine: ' ENGINE = MergeTree ORDER BY tuple()',
}
for (const unit of ['h', 'km', 'mi'] as const) {
  const logs = randomLogs(ROWS, unit, unit.length)
  session.query('DROP TABLE IF EXISTS fleets.readings')
  session.query('DROP TABLE IF EXISTS fleets.services')
  for (const statement of meterTables(logs, METER_TYPES)) session.query(statement)
  const name = unit === 'h' ? 'hours' : 'distance'
  const options = { today: TODAY, unit, readings: 'readings' }
  const services = { table: 'services', columns: ['n'] }
  const expected = expectTotals(logs, unit)
  const queries = [
    [
      expected.machines,
      `SELECT machine, ${name}, ${name}_date, ${name}_breaks FROM (${meterSql('clickhouse', options)}) ORDER BY machine`,
    ],
    [
      expected.services,
      `SELECT n, last_${name}, ${name}, ${name}_date FROM (${meterSql('clickhouse', { ...options, services })}) ORDER BY n`,
    ],
  ] as const
  for (const [lines, sql] of queries) {
    const answers = session.query(sql, 'TabSeparated').trimEnd().split('\n')
    if (answers.length !== lines.length)
      throw new Error(`expected ${lines.length} rows, found ${answers.length}`)
    const wrong = lines.filter(
      (line, at) => line !== answers[at]?.replaceAll('\t', ' ').replaceAll('\\N', 'null'),
    )
    if (wrong.length > 0) console.log(wrong.slice(0, 3).map((line) => [line, answers[lines.indexOf(line)]]))
    differences += wrong.length
    console.log(`ClickHouse: ${lines.length} totals in ${unit} compared, ${wrong.length} differ`)
  }
}
session.cleanup()
if (differences > 0) process.exitCode = 1
