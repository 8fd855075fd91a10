import { readFileSync } from 'node:fs'
import { DuckDBInstance } from '@duckdb/node-api'
import { PGlite } from '@electric-sql/pglite'
import fc from 'fast-check'
import openSqlite from 'sql.js'
import { describe, expect, it } from 'vitest'
import { DUE_ROW_FIELDS } from '../../src/interval/dueRow.js'
import { type DueRow, dueSql, type SqlDialect } from '../../src/v1/interval/fleet.js'
import { type DueFacts, listDue, listDueRows } from '../../src/v1/service.js'
import { parseHistory, writeHistory } from '../../src/v1/spec.js'
import { FOLDERS, usedMachines } from '../service/support/usedMachines.js'
import { cases, isLongRun } from '../support/law.js'
import { readExample } from '../support/readExample.js'

const page = readFileSync('docs/store.md', 'utf8')
const tables = /```sql\n([\s\S]*?)```/.exec(page)?.[1] ?? ''
const OPTIONS = { soon: { hours: 40, days: 45, fraction: 0.8 }, staleAfter: { days: 30 } } as const
const TODAY = '2031-06-01'

/** A database as this test uses it: it runs statements and returns rows. */
interface Database {
  readonly dialect: SqlDialect
  readonly run: (sql: string) => Promise<readonly Record<string, unknown>[]>
  readonly close: () => Promise<void>
}
const OPEN: Readonly<Record<Exclude<SqlDialect, 'clickhouse'>, () => Promise<Database>>> = {
  duckdb: async () => {
    const connection = await (await DuckDBInstance.create(':memory:')).connect()
    return {
      dialect: 'duckdb',
      run: async (sql) => (await connection.runAndReadAll(sql)).getRowObjects(),
      close: async () => connection.closeSync(),
    }
  },
  sqlite: async () => {
    const database = new (await openSqlite()).Database()
    return {
      dialect: 'sqlite',
      run: async (sql) => {
        const { columns = [], values = [] } = database.exec(sql).at(-1) ?? {}
        return values.map((row) => Object.fromEntries(columns.map((name, place) => [name, row[place]])))
      },
      close: async () => database.close(),
    }
  },
  postgresql: async () => {
    const database = await PGlite.create()
    return {
      dialect: 'postgresql',
      run: async (sql) => (await database.exec(sql)).at(-1)?.rows ?? [],
      close: () => database.close(),
    }
  },
}

const quote = (value: unknown): string =>
  value === undefined || value === null
    ? 'NULL'
    : typeof value === 'string'
      ? `'${value.replaceAll("'", "''")}'`
      : String(value)
const snake = (field: string): string => field.replace(/[A-Z]/g, (letter) => `_${letter.toLowerCase()}`)

const saveLines = (database: Database, machine: string, from: number, lines: readonly string[]) =>
  database.run(
    `INSERT INTO history VALUES ${lines.map((body, place) => `(${quote(machine)}, ${from + place}, ${quote(body)})`).join(', ')}`,
  )
async function readLog(database: Database, machine: string) {
  const rows = await database.run(`SELECT body FROM history WHERE machine = ${quote(machine)} ORDER BY line`)
  return { count: rows.length, read: parseHistory(rows.map(({ body }) => String(body))) }
}
const saveRows = (database: Database, machine: string, rows: readonly DueRow[]) =>
  database.run(
    `INSERT INTO due_row (id, machine, ${DUE_ROW_FIELDS.map(snake).join(', ')}) VALUES ${rows
      .map(
        (row) => `(${[row.id, machine, ...DUE_ROW_FIELDS.map((field) => row[field])].map(quote).join(', ')})`,
      )
      .join(', ')}`,
  )

/** PostgreSQL takes seconds to start, so only the long run uses it; `interval/fleet` tests its SQL in both runs. */
const DIALECTS = (['duckdb', 'sqlite', 'postgresql'] as const).slice(0, isLongRun ? 3 : 2)

describe.each(DIALECTS)('the tables of the page in %s', (dialect) => {
  it('keep logs without loss, refuse the second of two writers, and find what is due', async () => {
    const database = await OPEN[dialect]()
    await database.run(tables)
    const facts = FOLDERS.map((folder): DueFacts => {
      return { sheet: readExample(folder, 'sheet'), log: readExample(folder, 'log'), today: '2023-10-06' }
    })
    for (const { log } of facts) await saveLines(database, log.id, 0, writeHistory(log))
    for (const { log } of facts)
      expect((await readLog(database, log.id)).read).toEqual({ ok: true, value: log, findings: [] })

    // Two writers have read the same lines; each adds one.
    const id = 'station-2'
    const { count } = await readLog(database, id)
    const [first, second] = [1, 2].map((value) =>
      JSON.stringify({ op: 'add', path: '/meters/hours/readings/-', value: { date: '2023-10-06', value } }),
    )
    await saveLines(database, id, count, [first ?? ''])
    await expect(saveLines(database, id, count, [second ?? ''])).rejects.toThrow(/constraint/i)
    await saveLines(database, id, (await readLog(database, id)).count, [second ?? ''])
    const { read } = await readLog(database, id)
    expect(read.ok && read.value.meters.hours?.readings.slice(-2).map(({ value }) => value)).toEqual([1, 2])

    for (const fact of facts)
      await saveRows(database, fact.log.id, listDueRows(fact, { ...OPTIONS, severity: 'normal' }))
    const verdict = dueSql(dialect, { ...OPTIONS, today: '2023-10-06' })
    const found = await database.run(`SELECT id, ${verdict} AS verdict FROM due_row`)
    const expected = facts.flatMap((fact) => {
      const due = listDue(fact, { ...OPTIONS, severity: 'normal' })
      return listDueRows(fact, { ...OPTIONS, severity: 'normal' }).map((row, place) => [
        row.id,
        due[place]?.verdict,
      ])
    })
    expect(Object.fromEntries(found.map((row) => [row['id'], row['verdict']]))).toEqual(
      Object.fromEntries(expected),
    )
    await database.close()
  })
})

it('a fleet of used machines: the SQL gives each row the verdict of listDue', async () => {
  const database = await OPEN.sqlite()
  await database.run(tables)
  const machines = fc.sample(usedMachines, { numRuns: cases(150), seed: 20_310_601 })
  const expected = new Map<string, string>()
  for (const [place, drawn] of machines.entries()) {
    const facts = { ...drawn, log: { ...drawn.log, id: `m-${place}` }, today: TODAY }
    const options = { ...OPTIONS, severity: place % 2 === 0 ? 'normal' : 'severe' } as const
    const rows = listDueRows(facts, options)
    for (const [at, { verdict }] of listDue(facts, options).entries())
      expected.set(rows[at]?.id ?? '', verdict)
    if (rows.length > 0) await saveRows(database, facts.log.id, rows)
  }
  const verdict = dueSql('sqlite', { ...OPTIONS, today: TODAY })
  const found = await database.run(`SELECT id, ${verdict} AS verdict FROM due_row`)
  expect(found.length).toBeGreaterThan(cases(300))
  expect(new Map(found.map(({ id, verdict }) => [String(id), String(verdict)]))).toEqual(expected)
  expect(new Set(expected.values())).toEqual(
    new Set(['overdue', 'due', 'cannot tell', 'due soon', 'not due']),
  )
  await database.close()
})
