import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { parse } from 'csv-parse/sync'
import { describe, expect, it } from 'vitest'
import { makeNodeIo } from '../../src/cli/makeNodeIo.js'
import { runCommand } from '../../src/cli/runCommand.js'
import { memoryIo, PIPED } from '../support/memoryIo.js'
import { readExample } from '../support/readExample.js'

const TODAY = '2023-10-06'
const SHEET = ['--sheet', 'examples/tind-4/sheet.yaml', '--today', TODAY]
const log = readExample('tind-4', 'log')
/** One reading of each meter, and the newest reading of the hour meter. */
const withHours = (id: string, hours: number, place?: string) => ({
  ...log,
  id,
  ...(place !== undefined && { place }),
  meters: {
    ...log.meters,
    hours: {
      unit: 'h',
      readings: [...(log.meters.hours?.readings.slice(0, -1) ?? []), { date: '2023-10-04', value: hours }],
    },
  },
})

async function run(words: readonly string[], files: Readonly<Record<string, string>> = {}) {
  const io = memoryIo(files)
  const code = await runCommand(words, io)
  return { code, out: io.out.join('\n'), err: io.err.join('\n') }
}

const readTable = (text: string): readonly Record<string, string>[] => parse(text, { columns: true })
const lines = (...logs: readonly unknown[]) => logs.map((one) => `${JSON.stringify(one)}\n`).join('')

describe('due --format summary', () => {
  it('counts each machine once, under its most urgent verdict, by day and place', async () => {
    const fleet = lines(
      withHours('a', 900, 'North'),
      withHours('b', 901, 'North'),
      withHours('c', 900, 'South'),
      withHours('d', 440),
      { kind: 'machine-log' },
    )
    const { code, out, err } = await run(['due', '-', ...SHEET, '--format', 'summary'], { [PIPED]: fleet })
    expect(code).toBe(1)
    expect(err).toContain('line 5: ')
    const rows = readTable(out)
    const sum = (column: string) => rows.reduce((total, row) => total + Number(row[column]), 0)
    expect(sum('machines')).toBe(4)
    expect(rows.find((row) => row['place'] === 'North')).toMatchObject({
      day: TODAY,
      machines: '2',
      overdue: '2',
    })
    expect(rows.find((row) => row['place'] === 'South')).toMatchObject({ day: TODAY, machines: '1' })
    expect(sum('overdue') + sum('due') + sum('due_soon') + sum('cannot_tell') + sum('not_due')).toBe(4)
  })

  it('has the days of the brief rows; unknown days are last', async () => {
    const [served] = log.records
    const fleet = Array.from({ length: 40 }, (_nothing, index) => {
      const date = `2023-09-${10 + (index % 15)}`
      const record = { ...served, id: 'newest', date, readings: { hours: { value: 431, unit: 'h' } } }
      const machine = withHours(`m-${index}`, 432 + index * 3, `P${index % 3}`)
      return { ...machine, records: [record] }
    })
    const unknown = { ...withHours('x', 433), meters: {}, records: [], commissioned: undefined }
    const piped = { [PIPED]: lines(...fleet, unknown) }
    const brief = (await run(['due', '-', ...SHEET, '--brief'], piped)).out
      .split('\n')
      .map((line) => JSON.parse(line))
    const expected = new Map<string, number>()
    for (const machine of new Set(brief.map((row) => row.machine))) {
      const rows = brief.filter((row) => row.machine === machine)
      const isDue = rows.some(({ verdict }) => verdict === 'due' || verdict === 'overdue')
      const day = isDue ? TODAY : (rows.flatMap(({ dueOn = [] }) => dueOn).sort()[0] ?? '')
      expected.set(day, (expected.get(day) ?? 0) + 1)
    }
    const rows = readTable((await run(['due', '-', ...SHEET, '--format', 'summary'], piped)).out)
    const found = new Map<string, number>()
    for (const { day = '', machines } of rows) found.set(day, (found.get(day) ?? 0) + Number(machines))
    expect(found).toEqual(expected)
    expect(found.size).toBeGreaterThan(2)
    expect(rows.at(-1)?.['day']).toBe('')
    const days = rows.map(({ day, place }) => `${day || '9999'} ${place}`)
    expect(days).toEqual(days.toSorted())
  })

  it('counts machines of folders too, and those not to be used', async () => {
    const {
      kind: _kind,
      version: _version,
      machine: _machine,
      sheet: _sheet,
      ...work
    } = readExample('tind-4', 'record')
    const entries = work.entries.map((entry) =>
      entry.gearcase === 'front' ? { ...entry, leaks: 'dripping' } : entry,
    )
    const broken = { ...withHours('a', 440, 'North'), records: [...log.records, { ...work, entries }] }
    const piped = await run(['due', '-', ...SHEET, '--format', 'summary'], { [PIPED]: lines(broken) })
    expect(readTable(piped.out)).toMatchObject([{ place: 'North', not_to_be_used: '1' }])
    const folder = await run([
      'due',
      'examples/tind-4',
      'examples/bud-3',
      '--today',
      TODAY,
      '--format',
      'summary',
    ])
    const machines = JSON.parse(
      (await run(['due', 'examples/tind-4', 'examples/bud-3', '--today', TODAY, '--format', 'json'])).out,
    ).machines
    expect(readTable(folder.out).reduce((sum, row) => sum + Number(row['machines']), 0)).toBe(machines.length)
  })

  it('needs logs', async () => {
    const { code, err } = await run(['due', '-', '--format', 'summary'], { [PIPED]: '{}' })
    expect(code).toBe(2)
    expect(err).toContain('need logs and a sheet')
  })
})

it('a file shows how much of it is read; the steps grow with the count', async () => {
  const folder = mkdtempSync(join(tmpdir(), 'due-progress-'))
  try {
    const path = join(folder, 'fleet.jsonl')
    writeFileSync(path, lines(withHours('a', 440)).repeat(21_000))
    const io = memoryIo()
    await runCommand(['due', path, ...SHEET, '--brief'], { ...io, openInput: makeNodeIo().openInput })
    const progress = io.err.slice(0, -1)
    expect(progress).toHaveLength(11)
    const shares = progress.map((line) => Number(/^\d+ lines, (\d+) %$/.exec(line)?.[1]))
    expect(shares).toEqual(shares.toSorted((share, other) => share - other))
    expect(shares[0]).toBeLessThan(10)
    expect(progress.at(-1)).toMatch(/^20000 lines, 9\d %$/)
  } finally {
    rmSync(folder, { recursive: true })
  }
})
