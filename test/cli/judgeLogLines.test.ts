import { Readable, Writable } from 'node:stream'
import { describe, expect, it } from 'vitest'
import { judgeLogLines, type LineAnswer } from '../../src/cli/judgeLogLines.js'
import { MAX_LINE_LENGTH, readLines } from '../../src/cli/readLines.js'
import { runCommand } from '../../src/cli/runCommand.js'
import { en } from '../../src/message/en/index.js'
import { openFaults } from '../../src/record/index.js'
import { judgeOilLoss, listDue } from '../../src/v1/service.js'
import { CORRECTED, type Corrected } from '../record/support/corrections.js'
import { memoryIo, PIPED } from '../support/memoryIo.js'
import { requestExample, TODAY } from '../support/planExample.js'

const { sheet, log, due: options } = requestExample('tind-4')
const logLine = (id: string) => JSON.stringify({ ...log, id })
const SHEET = 'examples/tind-4/sheet.yaml'
const NO_OTHER_DOCUMENTS = { logs: [], toolboxes: [], stocks: [], procedures: [], records: [] }
const DAY = ['--today', TODAY]

async function run(words: readonly string[], files: Readonly<Record<string, string>> = {}) {
  const io = memoryIo(files)
  const code = await runCommand(words, io)
  return {
    code,
    err: io.err.join('\n'),
    answers: io.out.flatMap((text) => text.split('\n').map((line) => JSON.parse(line) as LineAnswer)),
  }
}

describe('due over logs that come one a line', () => {
  it('1,000 lines from a pipe: each answered in its order, the bad ones with findings, none stops the rest', async () => {
    const lines = Array.from({ length: 1000 }, (_nothing, place) => {
      if (place % 100 === 7) return '{"kind": "machine-log"'
      if (place % 100 === 8) return JSON.stringify({ ...log, id: `m-${place}`, metres: {} })
      if (place % 100 === 9)
        return JSON.stringify({ ...log, id: `m-${place}`, sheet: { id: 'x', revision: '1' } })
      return logLine(`m-${place}`)
    })
    const { code, err, answers } = await run(['due', '--sheet', SHEET, ...DAY], { [PIPED]: lines.join('\n') })
    expect(code).toBe(1)
    expect(answers.map(({ line }) => line)).toEqual(
      Array.from({ length: 1000 }, (_nothing, place) => place + 1),
    )
    const due = listDue({ sheet, log, today: TODAY }, options)
    for (const [place, answer] of answers.entries()) {
      const codes = answer.findings?.map(({ code: found }) => found)
      if (place % 100 === 7) expect(codes).toEqual(['spec/not-json'])
      else if (place % 100 === 8) expect(codes).toContain('spec/unknown-key')
      else if (place % 100 === 9) expect(codes).toEqual(['service/wrong-sheet'])
      else expect(answer).toEqual({ line: place + 1, machine: `m-${place}`, name: log.name, due })
      expect(answer.findings?.every(({ message }) => message.length > 10) ?? true).toBe(true)
    }
    expect(err).toMatch(/^1000 lines\n1000 lines, 30 with errors/)
  })

  it('a file of lines beside its sheet, blank lines and a byte order mark passed over', async () => {
    const files = { 'logs.jsonl': `\uFEFF${logLine('one')}\r\n\r\n  \n${logLine('two')}\r\n` }
    const { code, answers } = await run(['due', 'logs.jsonl', SHEET, ...DAY], files)
    expect(code).toBe(0)
    expect(answers.map(({ line, machine }) => [line, machine])).toEqual([
      [1, 'one'],
      [4, 'two'],
    ])
    expect(answers[0]?.due?.map(({ verdict }) => verdict)).toEqual(
      listDue({ sheet, log, today: TODAY }, options).map(({ verdict }) => verdict),
    )
  })

  it('answers for one machine alone where it is named, and takes severe use from each log', async () => {
    const severeLog = JSON.stringify({ ...log, id: 'hard', use: 'severe' })
    const files = { [PIPED]: `${logLine('one')}\n${severeLog}\n` }
    const { answers } = await run(['due', '--sheet', SHEET, '--machine', 'hard', ...DAY], files)
    expect(answers.map(({ machine }) => machine)).toEqual(['hard'])
    expect(answers[0]?.due).toEqual(listDue({ sheet, log, today: TODAY }, { ...options, severity: 'severe' }))
  })

  it('reads flat rows with limits of their own where there is no sheet', async () => {
    const row = { lastDate: '2023-01-06', everyMonths: 6 }
    const files = {
      'rows.ndjson': `${JSON.stringify({ id: 'a', ...row })}\n{"id":"b","lastDate":"2023-02-30"}\n`,
    }
    const badRun = await run(['due', 'rows.ndjson', ...DAY], files)
    expect(badRun.code).toBe(1)
    // Six months after 6 January is 6 July, long before October.
    expect(badRun.answers[0]).toMatchObject({
      id: 'a',
      verdict: 'overdue',
      dueBy: 'period',
      dueOn: '2023-07-06',
    })
    expect(badRun.err).toMatch(/2 lines, 1 with errors/)
    const goodRun = await run(['due', 'rows.jsonl', ...DAY], { 'rows.jsonl': `${JSON.stringify(row)}\n` })
    expect(goodRun.code).toBe(0)
  })

  it('reads flat rows on standard input; a misspelt field is no silent "not due"', async () => {
    const rows = [
      { id: 'a', lastDate: '2023-10-01', everyMonths: 6, depot: 'north' },
      { id: 'b', lastDate: '2023-10-01', everyMonth: 6, everyDays: 90, depot: 'south' },
    ]
    const files = { [PIPED]: rows.map((row) => JSON.stringify(row)).join('\n') }
    const { code, err, answers } = await run(['due', '-', ...DAY], files)
    expect(code).toBe(1)
    expect(answers).toMatchObject([
      { id: 'a', verdict: 'not due' },
      { id: 'b', verdict: 'cannot tell', findings: [{ code: 'spec/unknown-key', path: '/everyMonth' }] },
    ])
    expect(err).toBe('2 lines, 1 with errors.\nColumns not read: depot.')
    const goodRun = await run(['due', '-', ...DAY], { [PIPED]: JSON.stringify(rows[0]) })
    expect(goodRun).toMatchObject({ code: 0, err: expect.stringMatching(/^1 line, 0 with errors/) })
    const logs = await run(['due', '-', SHEET, ...DAY], { [PIPED]: logLine('one') })
    expect(logs.answers.map(({ machine }) => machine)).toEqual(['one'])
  })

  it('with --exit-code, has separate exit codes for due and for undecided', async () => {
    const row = (lastDate: string | null) => JSON.stringify({ lastDate, everyMonths: 6 })
    const ends = async (text: string, ...words: readonly string[]) =>
      (await run(['due', '-', '--exit-code', ...DAY, ...words], { [PIPED]: text })).code
    expect(await ends(row('2023-10-01'))).toBe(0)
    // Due soon, by 14 days.
    expect(await ends(row('2023-04-10'))).toBe(0)
    expect(await ends(`${row('2023-10-01')}\n${row('2023-04-06')}`)).toBe(3)
    expect(await ends(`${row(null)}\n${row('2020-01-01')}`)).toBe(3)
    expect(await ends(`${row('2023-10-01')}\n${row(null)}`)).toBe(4)
    expect(await ends(`${row('2020-01-01')}\nno row`)).toBe(1)
    // A query that failed sends nothing.
    expect(await runCommand(['due', '-', '--exit-code', ...DAY], memoryIo({ [PIPED]: '' }))).toBe(4)
    expect(await runCommand(['due', '-', ...DAY], memoryIo({ [PIPED]: '' }))).toBe(0)
    expect(await ends(logLine('one'), SHEET)).toBe(3)
    expect(await ends(`${logLine('one')}\n{}`, SHEET)).toBe(1)
    expect((await run(['due', '-', ...DAY], { [PIPED]: row('2020-01-01') })).code).toBe(0)
    expect((await run(['due', '-', SHEET, ...DAY], { [PIPED]: logLine('one') })).code).toBe(0)
    expect(await runCommand(['due', 'examples/tind-4', '--exit-code', ...DAY], memoryIo())).toBe(3)
    expect(await runCommand(['due', 'examples/tind-4', ...DAY], memoryIo())).toBe(0)
    expect(await runCommand(['plan', 'examples/tind-4', '--exit-code', ...DAY], memoryIo())).toBe(2)
  })

  it.each([
    [['due'], /a folder of them, or - for rows on standard input/],
    [['due', '-', '--sheet', '-'], /cannot both come from standard input/],
    [['due', '--sheet', '-'], /cannot both come from standard input/],
    [['due', '-', 'b.jsonl'], /expected one \.jsonl file or -, found 2/],
    [['due', 'a.jsonl', 'b.jsonl'], /expected one \.jsonl file or -, found 2/],
    [['due', '--sheet', 'examples/tind-4/toolbox.yaml'], /no sheet among the files/],
    [['due', '--sheet', 'nowhere.json'], /nowhere\.json: no such file/],
    [['due', 'nowhere.jsonl', SHEET], /nowhere\.jsonl: no such file/],
  ])('%j is a wrong command line', async (words, message) => {
    const { code, err } = await run([...words, ...DAY])
    expect(code).toBe(2)
    expect(err).toMatch(message)
  })

  it('a sheet that is wrong stops it before the first line', async () => {
    const { code, err, answers } = await run(['due', '--sheet', 'sheet.json', ...DAY], {
      'sheet.json': '{}',
      [PIPED]: logLine('one'),
    })
    expect(code).toBe(1)
    expect(err).toMatch(/sheet\.json/)
    expect(answers).toEqual([])
  })

  it('a pipe that breaks off is reported, and not as error in the program', async () => {
    const io = memoryIo()
    const readError = Object.assign(new Error('EIO: read'), { code: 'EIO', syscall: 'read' })
    const openInput = async () =>
      Readable.from(
        (async function* () {
          yield `${logLine('one')}\n`
          throw readError
        })(),
      )
    const code = await runCommand(['due', '--sheet', SHEET, ...DAY], { ...io, openInput })
    expect(code).toBe(2)
    expect(io.out).toHaveLength(1)
    expect(io.err.join('\n')).toMatch(/standard input: cannot be read \(EIO/)
  })

  it('waits for a slow reader and keeps no more than one log in memory', async () => {
    let asked = 0
    let written = 0
    let linesAhead = 0
    const input = Readable.from(
      (function* () {
        for (let place = 0; place < 300; place++) {
          asked += 1
          linesAhead = Math.max(linesAhead, asked - written)
          yield `${logLine(`m-${place}`)}\n`
        }
      })(),
      { highWaterMark: 1 },
    )
    const output = new Writable({
      highWaterMark: 1,
      write(_chunk, _encoding, done) {
        written += 1
        setImmediate(done)
      },
    })
    const chooseOptions = () => options
    const summary = await judgeLogLines({
      input,
      output,
      sheets: [sheet],
      today: TODAY,
      catalogue: en,
      chooseOptions,
    })
    expect(summary).toMatchObject({ lines: 300, refusedLines: 0 })
    expect(linesAhead).toBeLessThan(10)
  })
})

describe('lines of a stream', () => {
  const collect = async (chunks: readonly (string | Buffer)[], longest?: number) => {
    const found: (readonly [number, string | undefined])[] = []
    for await (const { line, text } of readLines(Readable.from(chunks), longest)) found.push([line, text])
    return found
  }

  it('are put together again, wherever a chunk ends, also within a letter', async () => {
    const bytes = Buffer.from('höhe\r\nзал\n\n😀')
    for (let cutPosition = 0; cutPosition <= bytes.length; cutPosition++)
      expect(await collect([bytes.subarray(0, cutPosition), bytes.subarray(cutPosition)])).toEqual([
        [1, 'höhe'],
        [2, 'зал'],
        [4, '😀'],
      ])
  })

  it('can also be texts; an empty text is no value', async () => {
    expect(await collect(['a\nb', 'c\n'])).toEqual([
      [1, 'a'],
      [2, 'bc'],
    ])
    expect(await collect([])).toEqual([])
    expect(await collect(['\n\n'])).toEqual([])
  })

  it('that are too long keep only their number, and the next is read', async () => {
    expect(await collect(['abcd\nabcde\nab'], 4)).toEqual([
      [1, 'abcd'],
      [2, undefined],
      [3, 'ab'],
    ])
    expect(await collect(['abc', 'de', '\nab'], 4)).toEqual([
      [1, undefined],
      [2, 'ab'],
    ])
  })

  it('a log of more than ten million characters is answered with a finding', async () => {
    const longLine = `{"kind":"${'x'.repeat(MAX_LINE_LENGTH)}"}\n${logLine('two')}\n`
    const { code, answers } = await run(['due', '--sheet', SHEET, ...DAY], { [PIPED]: longLine })
    expect(code).toBe(1)
    expect(answers).toMatchObject([
      { line: 1, findings: [{ code: 'spec/too-long', params: { limit: MAX_LINE_LENGTH } }] },
      { line: 2, machine: 'two' },
    ])
  })

  it('a machine with an open fault says so, and is not passed', async () => {
    const [{ record }] = CORRECTED as [Corrected]
    const log = JSON.parse(logLine('one'))
    const line = JSON.stringify({ ...log, records: [...log.records, { ...record, machine: 'one' }] })
    const judgedRun = await run(['due', '-', SHEET, '--exit-code', ...DAY], { [PIPED]: line })
    expect(judgedRun).toMatchObject({
      code: 3,
      answers: [{ faults: [{ record: record.id, date: record.date }] }],
    })
    const withoutLog = await run(['due', '-', SHEET, ...DAY], { [PIPED]: logLine('one') })
    expect(withoutLog.answers[0]).not.toHaveProperty('faults')
  })

  it('faults and losses are those of the whole judgement, which most logs are spared', async () => {
    const records = CORRECTED.map(({ record }) => ({ ...record, machine: log.id }))
    const topUp = {
      date: TODAY,
      gearcase: 'rear',
      volume: { value: 60, unit: 'mL' },
      oil: 'own oil',
    } as const
    const logs = [
      log,
      ...records.map((record) => ({ ...log, records: [...log.records, record] })),
      { ...log, records: [...log.records, ...records] },
      { ...log, topUps: [topUp] },
      { ...log, topUps: [] },
      { ...log, records: [] },
    ]
    const text = logs.map((candidate) => JSON.stringify(candidate)).join('\n')
    const { answers } = await run(['due', '-', SHEET, ...DAY], { [PIPED]: text })
    const judged = answers.map(({ faults = [], oilLoss = [] }) => ({ faults, oilLoss }))
    const set = { sheets: [{ document: sheet }], ...NO_OTHER_DOCUMENTS }
    expect(judged).toEqual(
      logs.map((candidate) => ({
        faults: openFaults({ document: candidate }, set, { today: TODAY }),
        oilLoss: judgeOilLoss({ sheet, log: candidate, today: TODAY }).filter(({ count }) => count > 0),
      })),
    )
    for (const key of ['faults', 'oilLoss'] as const)
      expect(judged.filter((answer) => answer[key].length > 0).length).toBeGreaterThan(0)
  })
})
