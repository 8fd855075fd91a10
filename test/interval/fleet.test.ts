import { type DuckDBConnection, DuckDBInstance } from '@duckdb/node-api'
import { PGlite } from '@electric-sql/pglite'
import fc from 'fast-check'
import openSqlite from 'sql.js'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { dateFromDay } from '../../src/calendar/dayNumbers.js'
import {
  computeDueColumns,
  createDueColumns,
  DUE_LIMITS,
  DUE_STATES,
  type DueColumns,
  type DueRow,
  type DueSqlOptions,
  dueSql,
  NO_DAY,
  writeDueRow,
} from '../../src/v1/interval/fleet.js'
import { computeDue } from '../../src/v1/interval.js'
import { isLongRun, law } from '../support/law.js'
import { ANYTHING } from './support/anything.js'
import { drawRows, OPTION_SETS } from './support/dueCases.js'
import { questionOf, randomRow, seedRandom, TODAY } from './support/randomRows.js'

const ROWS = isLongRun ? 20_000 : 5000
const rows = drawRows(ROWS)

const FIELDS = [
  ['lastDate', 'date'],
  ['lastHours', 'real'],
  ['lastDistance', 'real'],
  ['hours', 'real'],
  ['hoursDate', 'date'],
  ['distance', 'real'],
  ['distanceDate', 'date'],
  ['distanceUnit', 'text'],
  ['everyHours', 'real'],
  ['everyDistance', 'real'],
  ['everyDistanceUnit', 'text'],
  ['everyMonths', 'integer'],
  ['everyDays', 'integer'],
  ['windowHours', 'real'],
  ['windowDistance', 'real'],
  ['windowMonths', 'integer'],
  ['windowDays', 'integer'],
  ['eventDate', 'date'],
  ['noHourMeter', 'boolean'],
  ['noOdometer', 'boolean'],
] as const
const snake = (field: string): string => field.replace(/[A-Z]/g, (letter) => `_${letter.toLowerCase()}`)

function literal(value: unknown): string {
  if (value === undefined || value === null) return 'NULL'
  return typeof value === 'string' ? `'${value}'` : String(value)
}

/** The statements that create a table of the rows, with a thousand rows in each statement. */
function* tableOf(given: readonly DueRow[], realType: string): Generator<string> {
  yield `CREATE TABLE fleet (n integer, ${FIELDS.map(([field, type]) => `${snake(field)} ${type === 'real' ? realType : type}`).join(', ')})`
  for (let start = 0; start < given.length; start += 1000) {
    const values = given
      .slice(start, start + 1000)
      .map((row, index) => `(${start + index}, ${FIELDS.map(([field]) => literal(row[field])).join(', ')})`)
    yield `INSERT INTO fleet VALUES ${values.join(', ')}`
  }
}

let duck: DuckDBConnection
let postgres: PGlite
beforeAll(async () => {
  duck = await (await DuckDBInstance.create(':memory:')).connect()
  for (const statement of tableOf(rows, 'double')) await duck.run(statement)
  postgres = await PGlite.create()
  for (const statement of tableOf(rows, 'double precision')) await postgres.exec(statement)
})
afterAll(async () => {
  duck.closeSync()
  await postgres.close()
})

const columns = createDueColumns(ROWS)
const refusedRows = rows
  .map((row, index) => writeDueRow(columns, index, row))
  .filter((fields) => fields.length > 0)

describe.each(OPTION_SETS)('20,000 random rows, options $#', (options) => {
  const verdicts = computeDueColumns(columns, TODAY, options)
  const states = Array.from(verdicts.verdict, (state) => DUE_STATES[state] ?? '')

  test('columns equal computeDue record by record: state, first limit and its day', () => {
    expect(refusedRows).toEqual([])
    const mismatches: unknown[] = []
    for (const [index, row] of rows.entries()) {
      const verdict = computeDue(questionOf(row), options)
      const day = verdicts.dueDay[index] ?? NO_DAY
      const fleet = [
        states[index],
        DUE_LIMITS[verdicts.dueBy[index] ?? 0],
        day === NO_DAY ? undefined : dateFromDay(day),
      ]
      const singleVerdict = [verdict.verdict, verdict.dueBy, verdict.dueOn]
      if (fleet.some((value, at) => value !== singleVerdict[at]))
        mismatches.push({ row, fleet, single: singleVerdict })
    }
    expect(mismatches.slice(0, 3)).toEqual([])
    expect(mismatches.length).toBe(0)
  })

  test('every state occurs often enough to be tested', () => {
    const counts = new Map<string, number>()
    for (const state of states) counts.set(state, (counts.get(state) ?? 0) + 1)
    const expected =
      options.soon.hours === undefined && options.soon.distance === undefined
        ? DUE_STATES.filter((state) => state !== 'due soon')
        : DUE_STATES
    for (const state of expected) expect(counts.get(state) ?? 0, state).toBeGreaterThan(ROWS / 200)
  })

  test('embedded DuckDB agrees on every row', async () => {
    for (const query of queriesFor('duckdb')) {
      const answers = (await duck.runAndReadAll(query)).getRows().map(([, state]) => state)
      expect(answers.length).toBe(ROWS)
      expect(differences(answers)).toEqual([])
    }
  })

  test('embedded SQLite agrees on every row', async () => {
    const database = new (await openSqlite()).Database()
    for (const statement of tableOf(rows, 'real')) database.exec(statement)
    for (const query of queriesFor('sqlite')) {
      const [answers] = database.exec(query)
      expect(answers?.values.length).toBe(ROWS)
      expect(differences(answers?.values.map(([, state]) => state) ?? [])).toEqual([])
    }
    database.close()
  })

  test('embedded PostgreSQL agrees on every row', async () => {
    for (const query of queriesFor('postgresql')) {
      const { rows: answers } = await postgres.query<{ verdict: string }>(query)
      expect(answers.length).toBe(ROWS)
      expect(differences(answers.map(({ verdict }) => verdict))).toEqual([])
    }
  })

  /** The expression in a query of ours, and the whole query. */
  function queriesFor(dialect: 'duckdb' | 'sqlite' | 'postgresql'): readonly string[] {
    const facts = { ...options, today: TODAY }
    const wholeQuery = dueSql(dialect, { ...facts, query: { table: 'fleet', columns: ['n'] } })
    return [
      `SELECT n, ${dueSql(dialect, facts)} AS verdict FROM fleet ORDER BY n`,
      `${wholeQuery} ORDER BY n`,
    ]
  }

  function differences(answers: readonly unknown[]): unknown[] {
    return answers
      .map((answer, index) => ({ row: rows[index], sql: answer, columns: states[index] }))
      .filter(({ sql, columns: own }) => sql !== own)
      .slice(0, 3)
  }
})

test('SQL gives the verdict of computeDue for other rows too, in SQLite (law)', async () => {
  const { Database } = await openSqlite()
  law(20, fc.nat(), fc.constantFrom(...OPTION_SETS), (drawnSeed, options) => {
    const drawn = seedRandom(drawnSeed)
    const few = Array.from({ length: 20 }, (_, index) => randomRow(drawn, index))
    const database = new Database()
    for (const statement of tableOf(few, 'real')) database.exec(statement)
    const [answers] = database.exec(
      `SELECT n, ${dueSql('sqlite', { ...options, today: TODAY })} FROM fleet ORDER BY n`,
    )
    database.close()
    expect(answers?.values.map(([, state]) => state)).toEqual(
      few.map((row) => computeDue(questionOf(row), options).verdict),
    )
  })
})

describe('rows and columns', () => {
  test('unusable fields are listed, and their limit is `cannot tell`', () => {
    const oneColumn = createDueColumns(1)
    const judge = (row: DueRow) => {
      const unusable = writeDueRow(oneColumn, 0, row)
      const { verdict } = computeDueColumns(oneColumn, TODAY, { soon: {}, staleAfter: { days: 30 } })
      return [unusable, DUE_STATES[verdict[0] ?? 0]]
    }
    const validRow: DueRow = {
      lastDate: '2031-10-01',
      lastHours: 10,
      hours: 20,
      hoursDate: '2031-10-05',
      everyHours: 250,
      everyMonths: 6,
    }
    expect(judge(validRow)).toEqual([[], 'not due'])
    expect(judge({ ...validRow, hours: -1 })).toEqual([['hours'], 'cannot tell'])
    expect(judge({ ...validRow, hours: Number.NaN })).toEqual([['hours'], 'cannot tell'])
    expect(judge({ ...validRow, hours: 1_000_000_000.001 })).toEqual([['hours'], 'cannot tell'])
    expect(judge({ ...validRow, everyHours: '250' as unknown as number })).toEqual([
      ['everyHours'],
      'cannot tell',
    ])
    expect(judge({ ...validRow, lastDate: '2031-02-30' })).toEqual([['lastDate'], 'cannot tell'])
    expect(judge({ ...validRow, everyMonths: 1.5 })).toEqual([['everyMonths'], 'cannot tell'])
    expect(judge({ ...validRow, everyMonths: -1 })).toEqual([['everyMonths'], 'cannot tell'])
    expect(judge({ ...validRow, hoursDate: 5 as unknown as string })).toEqual([['hoursDate'], 'cannot tell'])
    expect(judge({ ...validRow, everyDistance: 5, lastDistance: 1, distance: 2 })).toEqual([
      ['lastDistance', 'distance', 'everyDistance'],
      'cannot tell',
    ])
    expect(judge({})).toEqual([[], 'cannot tell'])
    expect(judge({ ...validRow, hoursDate: '2031-10-07' })).toEqual([[], 'cannot tell'])
    expect(judge({ ...validRow, hoursDate: '2031-09-30' })).toEqual([[], 'cannot tell'])
    expect(judge({ ...validRow, lastDate: '2031-10-07' })).toEqual([[], 'cannot tell'])
    expect(judge({ everyMonths: 120_000, lastDate: '2031-01-01' })).toEqual([[], 'cannot tell'])
  })

  /** Serviced five days ago, so that only a bad field can prevent `not due`. */
  const greenRow: DueRow = {
    lastDate: '2031-10-01',
    lastHours: 10,
    hours: 20,
    hoursDate: '2031-10-05',
    everyHours: 250,
    windowHours: 25,
    everyMonths: 6,
  }
  const judgeRow = (row: object) => {
    const oneColumn = createDueColumns(1)
    const unusable = writeDueRow(oneColumn, 0, row)
    const { verdict } = computeDueColumns(oneColumn, TODAY, { soon: {}, staleAfter: { days: 30 } })
    return [unusable, DUE_STATES[verdict[0] ?? 0]]
  }

  test.each([
    ['everyMonth', 6],
    ['everymonths', 6],
    ['every_months', 6],
    ['every-distance-unit', 'km'],
    ['EveryMonths', 6],
    ['everyMonths ', 6],
    ['evryMonts', 6],
    ['eveyrDays', 90],
    ['event_date', '2031-10-05'],
    ['eventDate2', '2031-10-05'],
    ['hour', 400],
    ['Hours', 400],
    ['nohourmeter', true],
    ['windowDay', 3],
    ['lastHour', 30],
    ['distanceUnits', 'km'],
  ])('the misspelt field %s is named, and its row cannot be judged', (field, value) => {
    expect(judgeRow({ ...greenRow, [field]: value })).toEqual([[field], 'cannot tell'])
  })

  test.each([
    ['everyYears', 1],
    ['every_km', '5000'],
    ['everyWeeks', 26],
    ['EVERY_YEAR', 'P1Y'],
    ['eventDay', '2031-10-05'],
    ['event_on', '2031-10-05'],
  ])('%s, a limit or event that a row does not have, is reported', (field, value) => {
    expect(judgeRow({ ...greenRow, [field]: value })).toEqual([[field], 'cannot tell'])
  })

  test.each([
    ['customer', 'Nordskar'],
    ['depot', 7],
    ['lastName', 'Lind'],
    ['lastSite', 'north'],
    ['eventName', 'ford'],
    ['eventId', 12],
    ['everyone', 'all'],
    ['instance', 'left'],
    ['distanceToDepot', 12],
    ['nextDate', '2031-12-01'],
    ['dailyHours', 4],
    ['house', 3],
    ['notes', 'x'.repeat(100)],
    ['x'.repeat(100_000), 1],
    ['every'.repeat(100_000), 'x'],
    ['', 0],
    // As in a known field, null is not a value.
    ['everyMonth', null],
    ['eventDay', undefined],
  ])('the foreign column %.20s passes', (field, value) => {
    expect(judgeRow({ ...greenRow, [field]: value })).toEqual([[], 'not due'])
  })

  test('of two fields that one may mean neither is taken', () => {
    expect(judgeRow({ ...greenRow, everyHays: 6, everyDats: 9 })).toEqual([
      ['everyHays', 'everyDats'],
      'cannot tell',
    ])
  })

  test('a row with an unusable field is never green', () => {
    for (const [field, value] of [
      ['eventDate', '2031-02-30'],
      ['everyDays', -1],
      ['windowHours', '5'],
      ['windowMonths', 0.5],
      ['noHourMeter', 'no'],
      ['noOdometer', 1],
      ['distance', 5],
      ['lastDistance', 5],
    ])
      expect(judgeRow({ ...greenRow, [field as string]: value }), String(field)).toEqual([
        [field],
        'cannot tell',
      ])
    // A row that is due by its usable fields stays due.
    expect(judgeRow({ ...greenRow, everyHours: 5, everyMonth: 6 })).toEqual([['everyMonth'], 'due'])
    expect(judgeRow({ ...greenRow, everyHours: 5, windowHours: 3, everyMonth: 6 })).toEqual([
      ['everyMonth'],
      'overdue',
    ])
    expect(judgeRow({ lastDate: '2031-09-01', everyMonths: 6, everyMonth: 1 })[1]).toBe('cannot tell')
  })

  test('a row that is written again with good fields is judged again', () => {
    const oneColumn = createDueColumns(1)
    const judge = () =>
      DUE_STATES[computeDueColumns(oneColumn, TODAY, { soon: {}, staleAfter: { days: 30 } }).verdict[0] ?? 0]
    writeDueRow(oneColumn, 0, { ...greenRow, everyDay: 3 } as DueRow)
    expect(judge()).toBe('cannot tell')
    writeDueRow(oneColumn, 0, greenRow)
    expect(judge()).toBe('not due')
  })

  test('misuse throws', () => {
    expect(() => createDueColumns(-1)).toThrow(RangeError)
    expect(() => createDueColumns(1.5)).toThrow(RangeError)
    expect(() => createDueColumns(Number.NaN)).toThrow(RangeError)
    expect(() => writeDueRow(createDueColumns(1), 1, {})).toThrow(
      new RangeError('index must be a whole number from 0 to 0, got 1'),
    )
    for (const [value, shownValue] of ANYTHING) {
      expect(() => createDueColumns(value as number)).toThrow(
        new TypeError(`length must be a whole number from 0 to 2147483647, got ${shownValue}`),
      )
      expect(() => writeDueRow(createDueColumns(1), value as number, {})).toThrow(
        `index must be a whole number from 0 to 0, got ${shownValue}`,
      )
    }
    for (const row of [undefined, null, 5, 'row', Symbol('s')])
      expect(() => writeDueRow(createDueColumns(1), 0, row as unknown as DueRow)).toThrow(
        /^row must be an object, got .*$/,
      )
    expect(() =>
      computeDueColumns(createDueColumns(1), 'today', { soon: {}, staleAfter: { days: 1 } }),
    ).toThrow(RangeError)
    expect(() =>
      computeDueColumns(createDueColumns(1), TODAY, { soon: { fraction: 2 }, staleAfter: { days: 1 } }),
    ).toThrow(RangeError)
  })

  test('the error names an argument that is not columns, for writing and for judging', () => {
    const validColumns = createDueColumns(2)
    const expectRefused = (columns: unknown, message: string | RegExp) => {
      const judge = () =>
        computeDueColumns(columns as DueColumns, TODAY, { soon: {}, staleAfter: { days: 1 } })
      expect(judge).toThrow(message)
    }
    const refusedTwice = (columns: unknown, message: string | RegExp) => {
      expectRefused(columns, message)
      expect(() => writeDueRow(columns as DueColumns, 0, {})).toThrow(message)
    }
    refusedTwice(null, 'columns must be an object, got null')
    refusedTwice('columns', "columns must be an object, got 'columns'")
    refusedTwice({ length: 2 }, 'columns.lastDay must be Int32Array of 2 rows or more, got undefined')
    refusedTwice({ ...validColumns, length: -1 }, 'columns.length must be a whole number from 0, got -1')
    refusedTwice(
      { ...validColumns, length: Symbol('s') },
      'columns.length must be a whole number from 0, got symbol',
    )
    for (const name of Object.keys(validColumns).filter((key) => key !== 'length'))
      refusedTwice(
        { ...validColumns, [name]: null },
        new RegExp(`^columns\\.${name} must be [A-Za-z0-9]+ of 2 rows or more, got null$`),
      )
    expectRefused(
      { ...validColumns, hours: [5, 6] },
      'columns.hours must be Float64Array of 2 rows or more, got a list',
    )
    expectRefused(
      { ...validColumns, hours: new Float32Array(2) },
      'columns.hours must be Float64Array of 2 rows or more, got an object',
    )
    expectRefused(
      { ...validColumns, everyDays: new Int32Array(1) },
      'columns.everyDays must be Int32Array of 2 rows or more, got an object',
    )
    // It is possible to judge only the first rows.
    expect(
      computeDueColumns({ ...validColumns, length: 1 }, TODAY, { soon: {}, staleAfter: { days: 1 } }).verdict
        .length,
    ).toBe(1)
  })

  test('a hostile row is only data', () => {
    const row = JSON.parse(
      '{"__proto__": {"everyHours": 1}, "constructor": 5, "lastDate": "2031-01-01", "everyMonths": 6}',
    )
    expect(writeDueRow(createDueColumns(1), 0, row)).toEqual([])
    expect(
      writeDueRow(createDueColumns(1), 0, { hours: 'x'.repeat(1_000_000) as unknown as number }),
    ).toEqual(['hours'])
  })
})

describe('dueSql', () => {
  const options = { today: TODAY, soon: {}, staleAfter: { days: 30 } } as const

  test('column names are the caller’s, quoted', async () => {
    const sql = dueSql('duckdb', {
      ...options,
      columns: { lastDate: 'served "on"; DROP TABLE x', everyMonths: 'm' },
    })
    expect(sql).toContain('"served ""on""; DROP TABLE x"')
    const connection = await (await DuckDBInstance.create(':memory:')).connect()
    const nulls = FIELDS.filter(([field]) => field !== 'lastDate' && field !== 'everyMonths')
      .map(([field, type]) => `CAST(NULL AS ${type === 'real' ? 'double' : type}) AS ${snake(field)}`)
      .join(', ')
    const reader = await connection.runAndReadAll(
      `SELECT ${sql} FROM (SELECT DATE '2031-04-06' AS "served ""on""; DROP TABLE x", 6 AS m, ${nulls})`,
    )
    expect(reader.getRows()).toEqual([['due']])
  })

  test('columns that a table does not have: the verdicts of NULL in every row, in a shorter text', async () => {
    const OPTIONAL = FIELDS.map(([field]) => field).filter((field) => field !== 'lastDate')
    const sets: readonly (readonly (typeof OPTIONAL)[number][])[] = [
      ...OPTIONAL.filter((_field, index) => isLongRun || index % 5 === 0).map((field) => [field]),
      ['hours', 'hoursDate'],
      [
        'everyDistance',
        'distance',
        'lastDistance',
        'distanceDate',
        'distanceUnit',
        'everyDistanceUnit',
        'windowDistance',
      ],
      ['everyMonths', 'everyDays', 'windowMonths', 'windowDays', 'eventDate', 'noOdometer'],
      ['everyHours', 'everyDistance', 'eventDate', 'windowDays', 'windowMonths'],
      OPTIONAL,
    ]
    const database = new (await openSqlite()).Database()
    for (const statement of tableOf(rows.slice(0, 400), 'real')) database.exec(statement)
    const facts = { ...OPTION_SETS[0], today: TODAY } as DueSqlOptions
    const { severity: _severity, ...known } = facts as DueSqlOptions & { severity: string }
    for (const missing of sets) {
      const nulls = FIELDS.filter(([field]) => missing.some((name) => name === field)).map(
        ([field, type]) => `CAST(NULL AS ${type === 'real' ? 'double' : type}) AS ${snake(field)}`,
      )
      const withNulls = `SELECT n, ${dueSql('duckdb', known)} FROM (SELECT * REPLACE (${nulls.join(', ')}) FROM fleet WHERE n < 400) ORDER BY n`
      const expected = (await duck.runAndReadAll(withNulls)).getRows().map(([, state]) => state)
      const columns = Object.fromEntries(missing.map((field) => [field, null]))
      for (const query of [undefined, { table: 'fleet', columns: ['n'] }]) {
        const write = (dialect: 'duckdb' | 'postgresql' | 'sqlite') => {
          const sql = dueSql(dialect, { ...known, columns, ...(query && { query }) })
          if (missing.length > 1)
            expect(sql.length).toBeLessThan(dueSql(dialect, { ...known, ...(query && { query }) }).length)
          return query === undefined
            ? `SELECT n, ${sql} AS verdict FROM fleet WHERE n < 400 ORDER BY n`
            : `${sql} WHERE n < 400 ORDER BY n`
        }
        const inDuck = (await duck.runAndReadAll(write('duckdb'))).getRows().map(([, state]) => state)
        expect(inDuck, missing.join()).toEqual(expected)
        // The same text but for names and types; each query is planned anew, which takes long.
        if (missing.length === 1 && !isLongRun) continue
        const inPostgres = await postgres.query<{ verdict: string }>(write('postgresql'))
        expect(
          inPostgres.rows.map(({ verdict }) => verdict),
          missing.join(),
        ).toEqual(expected)
        expect(
          database.exec(write('sqlite'))[0]?.values.map(([, state]) => state),
          missing.join(),
        ).toEqual(expected)
      }
    }
    database.close()
    const onlyMonths = Object.fromEntries(
      OPTIONAL.filter((field) => field !== 'everyMonths').map((field) => [field, null]),
    )
    expect(dueSql('duckdb', { ...known, columns: onlyMonths }).length).toBeLessThan(1500)
    expect(() =>
      dueSql('duckdb', { ...known, columns: { lastDate: null } } as unknown as DueSqlOptions),
    ).toThrow(TypeError)
  })

  test('a query is less than a third as long as the expression', () => {
    const query = { table: 'fleet', columns: ['n'] }
    for (const dialect of ['duckdb', 'postgresql', 'sqlite'] as const)
      expect(dueSql(dialect, { ...options, query }).length).toBeLessThan(dueSql(dialect, options).length / 3)
  })

  test('the names of a query are quoted, and nothing else is a query', async () => {
    const columns = { lastDate: 'served' }
    const sql = dueSql('duckdb', {
      ...options,
      columns,
      query: { table: 'x"; DROP TABLE y', columns: ['a"b'] },
    })
    expect(sql).toContain('"x""; DROP TABLE y"')
    expect(sql.startsWith('SELECT "a""b", CASE')).toBe(true)
    const queries = [
      {},
      { table: 'fleet' },
      { table: 'fleet', columns: [1] },
      { table: 'fleet', columns: ['n'], from: 1 },
      null,
    ]
    for (const query of queries)
      expect(() => dueSql('duckdb', { ...options, query } as unknown as DueSqlOptions)).toThrow(TypeError)
    for (const query of [
      { table: '', columns: ['n'] },
      { table: 'fleet', columns: [' '] },
    ])
      expect(() => dueSql('duckdb', { ...options, query })).toThrow(RangeError)
  })

  test('in SQLite a column that is not there is an error, not a text', async () => {
    const database = new (await openSqlite()).Database()
    for (const statement of tableOf(rows.slice(0, 1), 'real')) database.exec(statement)
    const sql = dueSql('sqlite', { ...options, columns: { lastDate: 'served `on`' } })
    expect(() => database.exec(`SELECT ${sql} FROM fleet`)).toThrow('no such column: served `on`')
    database.close()
  })

  test.each(['postgresql', 'duckdb', 'sqlite'] as const)(
    'past the end of the calendar, %s',
    async (dialect) => {
      const farRow: DueRow = { lastDate: '9990-01-01', everyMonths: 240, everyDays: 1 }
      const nearRow: DueRow = { lastDate: '2031-01-31', everyMonths: 1, windowMonths: 119_000 }
      const sql = `SELECT ${dueSql(dialect, { ...options, today: '9999-01-01' })} AS verdict FROM fleet ORDER BY n`
      const statements = [...tableOf([farRow, nearRow], dialect === 'duckdb' ? 'double' : 'double precision')]
      const answers: unknown[] = []
      if (dialect === 'sqlite') {
        const database = new (await openSqlite()).Database()
        for (const statement of statements) database.exec(statement)
        answers.push(...(database.exec(sql)[0]?.values.map(([state]) => state) ?? []))
      } else if (dialect === 'duckdb') {
        const connection = await (await DuckDBInstance.create(':memory:')).connect()
        for (const statement of statements) await connection.run(statement)
        answers.push(...(await connection.runAndReadAll(sql)).getRows().map(([state]) => state))
      } else {
        await postgres.exec(`CREATE SCHEMA far; SET search_path TO far; ${statements.join(';')}`)
        const read = await postgres.query<{ verdict: string }>(sql)
        answers.push(...read.rows.map(({ verdict }) => verdict))
        await postgres.exec('SET search_path TO public')
      }
      expect(answers).toEqual(['cannot tell', 'due'])
    },
  )

  test('misuse throws', () => {
    expect(() => dueSql('oracle' as 'duckdb', options)).toThrow(
      "dialect must be 'postgresql', 'duckdb', 'sqlite' or 'clickhouse', got 'oracle'",
    )
    expect(() => dueSql('duckdb', { ...options, today: "2031-01-01'; --" })).toThrow(RangeError)
    expect(() => dueSql('duckdb', { ...options, today: undefined } as unknown as DueSqlOptions)).toThrow(
      'options.today must be a date from 0001-01-01 to 9999-12-31, got undefined',
    )
    expect(() => dueSql('duckdb', { ...options, soon: { hours: Number.NaN } })).toThrow(RangeError)
    expect(() =>
      dueSql('duckdb', { ...options, staleAfter: { days: '1; DROP' as unknown as number } }),
    ).toThrow(TypeError)
    for (const [value, shownValue] of ANYTHING)
      expect(() => dueSql(value as 'duckdb', options)).toThrow(
        `dialect must be 'postgresql', 'duckdb', 'sqlite' or 'clickhouse', got ${shownValue}`,
      )
    for (const none of [undefined, null])
      expect(() => dueSql('duckdb', none as unknown as DueSqlOptions)).toThrow('options must be an object')
    expect(() => dueSql('duckdb', { ...options, columns: null } as unknown as DueSqlOptions)).toThrow(
      'options.columns must be an object, got null',
    )
    expect(() =>
      dueSql('duckdb', { ...options, columns: { lastDate: 5 } } as unknown as DueSqlOptions),
    ).toThrow('options.columns.lastDate must be a column name, got 5')
    for (const name of ['', ' '])
      expect(() => dueSql('duckdb', { ...options, columns: { lastDate: name } })).toThrow(RangeError)
    expect(() => dueSql('duckdb', { ...options, columns: { lastDate: '' } })).toThrow(
      "options.columns.lastDate must be a column name, got ''",
    )
    expect(() =>
      dueSql('duckdb', { ...options, columns: { lastdate: 'served' } } as unknown as DueSqlOptions),
    ).toThrow("options.columns must not have the key 'lastdate'; did you mean lastDate?")
    expect(() => dueSql('duckdb', { ...options, days: 3 } as unknown as DueSqlOptions)).toThrow(
      "options must not have the key 'days'",
    )
  })
})
