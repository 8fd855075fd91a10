import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { type DuckDBConnection, DuckDBInstance } from '@duckdb/node-api'
import { PGlite } from '@electric-sql/pglite'
import fc from 'fast-check'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { dueSql, type MeterSqlOptions, meterSql } from '../../src/v1/interval/fleet.js'
import { computeDue } from '../../src/v1/interval.js'
import { isLongRun, lawAsync } from '../support/law.js'
import { ANYTHING } from './support/anything.js'
import { question, stated } from './support/machine.js'
import { expectTotals, meterTables, randomLogs, writeAnswer } from './support/randomMeters.js'
import { TODAY } from './support/randomRows.js'

const MACHINES = isLongRun ? 20_000 : 600
const TYPES = { date: 'date', integer: 'integer', boolean: 'boolean', engine: '' }
const SERVICES = { table: 'services', columns: ['n'] }

let postgres: PGlite
let duck: DuckDBConnection
beforeAll(async () => {
  duck = await (await DuckDBInstance.create(':memory:')).connect()
  postgres = await PGlite.create()
})
afterAll(async () => {
  duck.closeSync()
  await postgres.close()
})

const ENGINES = {
  duckdb: {
    double: 'double',
    exec: (sql: string) => duck.run(sql),
    read: async (sql: string) => (await duck.runAndReadAll(sql)).getRowsJS(),
  },
  postgresql: {
    double: 'double precision',
    exec: (sql: string) => postgres.exec(sql),
    read: async (sql: string) =>
      (await postgres.query<unknown[]>(sql, [], { rowMode: 'array' })).rows as unknown[][],
  },
} as const

/** Dates as plain text, everything else as it is. */
const clean = (rows: readonly (readonly unknown[])[]): readonly string[] =>
  rows.map((row) =>
    writeAnswer(row.map((value) => (value instanceof Date ? value.toISOString().slice(0, 10) : value))),
  )

describe.each(['h', 'km', 'mi'] as const)('machines with changes of their meter, %s', (unit) => {
  const logs = randomLogs(MACHINES, unit, unit.length)
  const { machines, services } = expectTotals(logs, unit)
  const options: MeterSqlOptions = { today: TODAY, unit, readings: 'readings' }
  const name = unit === 'h' ? 'hours' : 'distance'

  test('the generated machines have what is hard', () => {
    const broken = machines.filter((line) => !line.endsWith(' 0')).length
    expect(machines.length).toBeGreaterThan(MACHINES * 0.9)
    expect(broken).toBeGreaterThan(MACHINES / 20)
    expect(machines.length - broken).toBeGreaterThan(MACHINES / 5)
    expect(services.filter((line) => / null \d/.test(line)).length).toBeGreaterThan(MACHINES / 20)
  })

  test.each(['duckdb', 'postgresql'] as const)('%s: each total is that of the library', async (dialect) => {
    const { double, exec, read } = ENGINES[dialect]
    await exec('DROP TABLE IF EXISTS readings; DROP TABLE IF EXISTS services')
    for (const statement of meterTables(logs, { ...TYPES, double })) await exec(statement)
    const totals = await read(
      `SELECT machine, ${name}, ${name}_date, ${name}_breaks FROM (${meterSql(dialect, options)}) AS totals ORDER BY machine`,
    )
    expect(differences(clean(totals), machines)).toEqual([])
    const starts = await read(
      `SELECT n, last_${name}, ${name}, ${name}_date FROM (${meterSql(dialect, { ...options, services: SERVICES })}) AS totals ORDER BY n`,
    )
    expect(differences(clean(starts), services)).toEqual([])
  })

  function differences(found: readonly string[], expected: readonly string[]): readonly unknown[] {
    expect(found.length).toBe(expected.length)
    return found.flatMap((line, at) => (line === expected[at] ? [] : [[line, expected[at]]])).slice(0, 3)
  }
})

describe('meterSql', () => {
  const options: MeterSqlOptions = { today: TODAY, unit: 'h', readings: 'readings' }
  const openDuck = async () => (await DuckDBInstance.create(':memory:')).connect()

  test('its result is the table of dueSql: the verdicts are those of computeDue for the logs', async () => {
    const connection = await openDuck()
    const logs = randomLogs(MACHINES, 'km', 7)
    for (const statement of meterTables(logs, { ...TYPES, double: 'double' })) await connection.run(statement)
    const columns = ['n', 'machine', 'last_date']
    await connection.run(
      `CREATE VIEW fleet AS SELECT *, 'km' AS every_distance_unit, CAST(60 AS double) AS every_distance, CAST(10 AS double) AS window_distance
       FROM (${meterSql('duckdb', { ...options, unit: 'km', services: { table: 'services', columns } })})`,
    )
    const due = { soon: { fraction: 0.9 }, staleAfter: { days: 60 } }
    const absent = [
      'lastHours',
      'hours',
      'hoursDate',
      'everyHours',
      'windowHours',
      'noHourMeter',
      'noOdometer',
    ]
    const periods = ['everyMonths', 'everyDays', 'windowMonths', 'windowDays', 'eventDate']
    const verdict = dueSql('duckdb', {
      ...due,
      today: TODAY,
      columns: Object.fromEntries([...absent, ...periods].map((name) => [name, null])),
    })
    const rows = (
      await connection.runAndReadAll(
        `SELECT last_distance < 0 OR distance < last_distance OR distance - last_distance > 2400 * (distance_date - last_date + 1), ${verdict} FROM fleet ORDER BY n`,
      )
    ).getRowsJS()
    connection.closeSync()
    const distance = (value: string) => stated({ distance: { value, unit: 'km' } })
    const intervals = { repeat: distance('60'), window: distance('10') }
    const counts = new Map<unknown, number>()
    let n = -1
    for (const machine of logs) {
      n += machine.records.length
      const newest = [...machine.records.keys()]
        .filter((at) => (machine.records[at]?.date ?? '') <= TODAY)
        .sort((one, other) =>
          (machine.records[one]?.date ?? '') < (machine.records[other]?.date ?? '') ? -1 : 1,
        )
        .at(-1)
      if (newest !== undefined) {
        const [isRefused, row] = rows[n - machine.records.length + 1 + newest] ?? []
        const { verdict: expected } = computeDue(question(intervals, machine, TODAY), {
          ...due,
          severity: 'normal',
        })
        // `dueSql` takes no totals below 0 and no falls (after a break), and no impossible use (a rollover in a day).
        expect(row, JSON.stringify(machine)).toBe(isRefused === true ? 'cannot tell' : expected)
        counts.set(row, (counts.get(row) ?? 0) + 1)
      }
      n += 1
    }
    for (const state of ['overdue', 'due', 'cannot tell', 'due soon', 'not due'])
      expect(counts.get(state) ?? 0, state).toBeGreaterThan(0)
  })

  test('of any machines, and with the days of a machine before or after those of others, the totals are the library’s (law)', async () => {
    const connection = await openDuck()
    await lawAsync(10, fc.nat(), fc.constantFrom('h', 'km', 'mi'), async (seed, unit) => {
      const logs = randomLogs(40, unit, seed)
      await connection.run('DROP TABLE IF EXISTS readings; DROP TABLE IF EXISTS services')
      for (const statement of meterTables(logs, { ...TYPES, double: 'double' }))
        await connection.run(statement)
      await connection.run(
        `CREATE OR REPLACE VIEW mixed AS SELECT * FROM readings ORDER BY hash(value, date, ${seed})`,
      )
      const sql = meterSql('duckdb', { today: TODAY, unit, readings: 'mixed' })
      const name = unit === 'h' ? 'hours' : 'distance'
      const reader = await connection.runAndReadAll(
        `SELECT machine, ${name}, ${name}_date, ${name}_breaks FROM (${sql}) ORDER BY machine`,
      )
      expect(clean(reader.getRowsJS())).toEqual(expectTotals(logs, unit).machines)
    })
    connection.closeSync()
  })

  test('from Parquet files, and again for machines with new readings only, the totals are the same', async () => {
    const folder = mkdtempSync(join(tmpdir(), 'drivetrain-parquet-'))
    const connection = await openDuck()
    try {
      const logs = randomLogs(200, 'h', 3)
      for (const statement of meterTables(logs, { ...TYPES, double: 'double' }))
        await connection.run(statement)
      await connection.run(`COPY (SELECT * FROM readings) TO '${folder}/readings.parquet' (FORMAT parquet)`)
      await connection.run(`CREATE VIEW files AS SELECT * FROM read_parquet('${folder}/*.parquet')`)
      const read = async (readings: string) => {
        const sql = meterSql('duckdb', { ...options, readings })
        return clean((await connection.runAndReadAll(`SELECT * FROM (${sql}) ORDER BY machine`)).getRowsJS())
      }
      const { machines } = expectTotals(logs, 'h')
      expect(await read('files')).toEqual(machines)
      // The machines of some readings, each with all its readings: the rows of the whole refresh.
      await connection.run(
        'CREATE VIEW new_readings AS SELECT * FROM files WHERE machine IN (SELECT machine FROM files WHERE hash(value) % 40 = 0)',
      )
      const refreshed = await read('new_readings')
      expect(refreshed.length).toBeGreaterThan(10)
      expect(refreshed.length).toBeLessThan(machines.length)
      expect(machines).toEqual(expect.arrayContaining([...refreshed]))
    } finally {
      connection.closeSync()
      rmSync(folder, { recursive: true })
    }
  })

  test('names are the caller’s, quoted; tables need no rollover, position, last reading or first use', async () => {
    const connection = await openDuck()
    await connection.run(`CREATE TABLE "log ""h""" AS SELECT * FROM (VALUES
      ('one', DATE '2031-05-01', 800.0, NULL), ('one', DATE '2031-05-20', 812.0, 0.0), ('one', DATE '2031-09-01', 30.0, NULL),
      (NULL, DATE '2031-09-01', 1.0, NULL), ('one', NULL, 99.0, NULL)) AS t("the machine", "on", shows, "new""")`)
    await connection.run(
      `CREATE TABLE jobs AS SELECT 'one' AS "the machine", DATE '2031-05-01' AS done, 'a' AS "job""s" UNION ALL SELECT 'two', DATE '2031-05-01', 'b'`,
    )
    const columns = {
      machine: 'the machine',
      date: 'on',
      value: 'shows',
      newValue: 'new"',
      lastDate: 'done',
      rollover: null,
      position: null,
      lastReading: null,
      neverServiced: null,
    }
    const own = { ...options, readings: 'log "h"', columns }
    const read = async (sql: string) => (await connection.runAndReadAll(sql)).getRowObjectsJson()
    expect(await read(meterSql('duckdb', own))).toEqual([
      { machine: 'one', hours: 842, hours_date: '2031-09-01', hours_breaks: '0' },
    ])
    const services = { table: 'jobs', columns: ['job"s'] }
    expect(await read(`${meterSql('duckdb', { ...own, services })} ORDER BY 1`)).toEqual([
      { 'job"s': 'a', last_hours: 800, hours: 842, hours_date: '2031-09-01' },
      { 'job"s': 'b', last_hours: null, hours: null, hours_date: null },
    ])
    connection.closeSync()
  })

  test('misuse throws', () => {
    const write =
      (more: object, dialect = 'duckdb') =>
      () =>
        meterSql(dialect as 'duckdb', { ...options, ...more } as MeterSqlOptions)
    expect(write({}, 'sqlite')).toThrow(
      new RangeError("dialect must be 'postgresql', 'duckdb' or 'clickhouse', got 'sqlite'"),
    )
    expect(write({ unit: 'm' })).toThrow("options.unit must be 'h', 'km' or 'mi', got 'm'")
    expect(write({ today: "2031-01-01'; --" })).toThrow(RangeError)
    expect(write({ readings: '' })).toThrow("options.readings must be a name, got ''")
    expect(write({ reading: 'x' })).toThrow("options must not have the key 'reading'; did you mean readings?")
    expect(write({ columns: { value: null } })).toThrow('options.columns.value must be a name, got null')
    expect(write({ columns: { hours: 'x' } })).toThrow("options.columns must not have the key 'hours'")
    expect(write({ services: { table: 'services' } })).toThrow(
      'options.services.columns must be a list, got undefined',
    )
    expect(write({ services: { table: 'services', columns: [5] } })).toThrow(TypeError)
    expect(write({ services: { columns: [] } })).toThrow(TypeError)
    for (const [value, shownValue] of ANYTHING) {
      expect(() => meterSql(value as 'duckdb', options)).toThrow(
        `dialect must be 'postgresql', 'duckdb' or 'clickhouse', got ${shownValue}`,
      )
      expect(write({ unit: value })).toThrow(`options.unit must be 'h', 'km' or 'mi', got ${shownValue}`)
    }
    expect(() => meterSql('duckdb', undefined as unknown as MeterSqlOptions)).toThrow(
      'options must be an object',
    )
  })
})
