import { parse } from 'csv-parse/sync'
import { describe, expect, it } from 'vitest'
import { runCommand } from '../../src/cli/runCommand.js'
import type { ServiceDue } from '../../src/service/index.js'
import { memoryIo, PIPED } from '../support/memoryIo.js'
import { readExample } from '../support/readExample.js'

const DAY = ['--today', '2023-10-06']
const EXAMPLES = ['tind-4', 'acre-26', 'bud-3', 'kvist-2', 'reach-55']

async function run(words: readonly string[], files: Readonly<Record<string, string>> = {}) {
  const io = memoryIo(files)
  const code = await runCommand(words, io)
  return { code, out: io.out.join('\n'), err: io.err.join('\n') }
}

interface Machine {
  readonly machine: string
  readonly due: readonly ServiceDue[]
  readonly faults: readonly unknown[]
}

/** The short row of a service, from the whole answer. */
const shorten = ({ machine, due, faults }: Machine) =>
  due.map((service) => {
    const governing = service.lines.find(({ by }) => by === service.dueBy)
    return {
      machine,
      service: service.service,
      gearcase: service.gearcase,
      instance: service.part.instance?.id,
      verdict: service.verdict,
      dueBy: service.dueBy,
      left: governing?.left,
      dueOn: service.dueOn,
      faults: faults.length === 0 ? undefined : faults.length,
    }
  })

const readRows = (out: string): readonly unknown[] => out.split('\n').map((line) => JSON.parse(line))
const withoutGaps = (value: unknown): unknown => JSON.parse(JSON.stringify(value))

describe('due --brief', () => {
  it.each(EXAMPLES)('%s: one line of JSON per service, with the fields of the whole answer', async (name) => {
    const fullOutput = await run(['due', `examples/${name}`, ...DAY, '--format', 'json'])
    const machines: readonly Machine[] = JSON.parse(fullOutput.out).machines
    const brief = await run(['due', `examples/${name}`, ...DAY, '--brief'])
    expect(brief.code).toBe(fullOutput.code)
    expect(readRows(brief.out)).toEqual(withoutGaps(machines.flatMap(shorten)))
    for (const line of brief.out.split('\n')) expect(line.length).toBeLessThan(240)
  })

  it.each(EXAMPLES)('%s: the table has the same rows', async (name) => {
    const brief = readRows((await run(['due', `examples/${name}`, ...DAY, '--brief'])).out)
    const table = await run(['due', `examples/${name}`, ...DAY, '--format', 'csv'])
    const rows: readonly Record<string, string>[] = parse(table.out, { columns: true })
    const asTable = (brief as readonly Record<string, unknown>[]).map((row) => {
      const left = row['left'] as { value: number; unit: string } | undefined
      const { machine, service, gearcase, instance, verdict, dueBy, dueOn, faults } = row
      const cells = [
        machine,
        service,
        gearcase,
        instance,
        verdict,
        dueBy,
        left?.value,
        left?.unit,
        dueOn,
        faults,
      ]
      return cells.map((cell) => String(cell ?? ''))
    })
    expect(rows.map((row) => Object.values(row))).toEqual(asTable)
  })

  const lines = (...logs: readonly unknown[]): string =>
    logs.map((log) => `${JSON.stringify(log)}\n`).join('')
  const log = readExample('tind-4', 'log')
  const fleet = lines(log, { ...log, id: 'second' }, { kind: 'machine-log' })
  const overLines = (...words: readonly string[]) =>
    run(['due', '-', '--sheet', 'examples/tind-4/sheet.yaml', ...DAY, ...words], { [PIPED]: fleet })

  it('over logs on lines: the rows of each log; a bad line gives its findings', async () => {
    const { code, out } = await overLines('--brief')
    expect(code).toBe(1)
    const rows = readRows(out) as readonly {
      machine?: string
      line?: number
      findings?: readonly unknown[]
    }[]
    const singleMachine = readRows((await run(['due', 'examples/tind-4', ...DAY, '--brief'])).out)
    expect(rows.slice(0, singleMachine.length)).toEqual(singleMachine)
    expect(rows.slice(singleMachine.length, -1).map(({ machine }) => machine)).toEqual(
      singleMachine.map(() => 'second'),
    )
    expect(rows.at(-1)).toMatchObject({ line: 3, findings: expect.arrayContaining([expect.anything()]) })
  })

  it('over logs on lines, as a table: one head, findings on standard error', async () => {
    const { out, err } = await overLines('--format', 'csv')
    const rows: readonly Record<string, string>[] = parse(out, { columns: true })
    expect(rows.length).toBe(readRows((await overLines('--brief')).out).length - 1)
    expect(new Set(rows.map((row) => row['machine']))).toEqual(new Set([log.id, 'second']))
    expect(err).toContain('line 3: ')
  })

  it('an open fault is in every row of its machine', async () => {
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
    const record = { ...work, entries }
    const brokenLines = lines({ ...log, records: [...log.records, record] })
    const fullOutput = await run(['due', '-', '--sheet', 'examples/tind-4/sheet.yaml', ...DAY], {
      [PIPED]: brokenLines,
    })
    const answer = JSON.parse(fullOutput.out)
    const { out } = await run(['due', '-', '--sheet', 'examples/tind-4/sheet.yaml', ...DAY, '--brief'], {
      [PIPED]: brokenLines,
    })
    const faults = (answer.faults ?? []).length
    expect(faults).toBeGreaterThan(0)
    for (const row of readRows(out)) expect(row).toMatchObject({ faults })
  })

  it('refuses rows without logs, which are short already', async () => {
    const row = '{"id":"m-1","lastDate":"2023-04-06","everyMonths":6}\n'
    for (const words of [['--brief'], ['--format', 'csv']]) {
      const { code, err } = await run(['due', '-', ...DAY, ...words], { [PIPED]: row })
      expect(code).toBe(2)
      expect(err).toContain('need logs and a sheet')
    }
  })

  it('one question has no table', async () => {
    const { code } = await run([
      'due',
      '--every',
      '100 h',
      '--last',
      '2023-01-01 at 1 h',
      '--now',
      '2 h',
      '--format',
      'csv',
    ])
    expect(code).toBe(2)
  })
})
