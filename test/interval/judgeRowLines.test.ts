import { PassThrough, Readable, Writable } from 'node:stream'
import { setFlagsFromString } from 'node:v8'
import { runInNewContext } from 'node:vm'
import { describe, expect, test } from 'vitest'
import { dateFromDay } from '../../src/calendar/dayNumbers.js'
import { judgeRowLines } from '../../src/cli/judgeRowLines.js'
import { en } from '../../src/message/en/index.js'
import {
  computeDueColumns,
  createDueColumns,
  DUE_LIMITS,
  DUE_STATES,
  NO_DAY,
  writeDueRow,
} from '../../src/v1/interval/fleet.js'
import { randomRow, seedRandom, TODAY } from './support/randomRows.js'

const SET = { today: TODAY, soon: { days: 30, fraction: 0.9 }, staleAfter: { days: 21 } } as const

async function run(input: Readable, highWaterMark = 16_384) {
  let text = ''
  const output = new Writable({
    highWaterMark,
    write(chunk, _encoding, done) {
      text += chunk
      setImmediate(done)
    },
  })
  const progress: number[] = []
  const summary = await judgeRowLines({
    ...SET,
    catalogue: en,
    input,
    output,
    onProgress: (lines) => progress.push(lines),
  })
  return { summary, progress, answers: text.split('\n').slice(0, -1) }
}

describe('due over JSON Lines', () => {
  test('10,000 lines answer in order, equal to the columns, through a slow sink', async () => {
    const random = seedRandom(7)
    const rows = Array.from({ length: 10_000 }, (_, index) => randomRow(random, index))
    const { summary, progress, answers } = await run(
      Readable.from(rows.map((row) => `${JSON.stringify(row)}\n`)),
      1,
    )
    const columns = createDueColumns(rows.length)
    rows.forEach((row, index) => {
      writeDueRow(columns, index, row)
    })
    const verdicts = computeDueColumns(columns, TODAY, { soon: SET.soon, staleAfter: SET.staleAfter })
    const expected = rows.map((row, index) => {
      const dueBy = DUE_LIMITS[verdicts.dueBy[index] ?? 0]
      const day = verdicts.dueDay[index] ?? NO_DAY
      return {
        id: row.id,
        verdict: DUE_STATES[verdicts.verdict[index] ?? 0],
        ...(dueBy && { dueBy }),
        ...(dueBy && day !== NO_DAY && { dueOn: dateFromDay(day) }),
      }
    })
    expect(answers.map((line) => JSON.parse(line))).toEqual(expected)
    expect(summary.lines).toBe(10_000)
    expect(Object.values(summary.countByState).reduce((sum, count) => sum + count, 0)).toBe(10_000)
    expect(progress).toEqual([4096, 8192, 10_000])
  })

  test('lines that are no rows are answered in their place', async () => {
    const lines = [
      '{"id":1,"everyMonths":6,"lastDate":"2031-04-06"}',
      '',
      'not json',
      '[1]',
      'null',
      '{"id":"x","hours":-1,"everyHours":5}',
      '{"id":{}}',
    ]
    const { summary, answers } = await run(Readable.from([lines.join('\r\n')]))
    expect(answers).toEqual([
      '{"id":1,"verdict":"due","dueBy":"period","dueOn":"2031-10-06"}',
      '{"line":3,"error":"not a JSON object"}',
      '{"line":4,"error":"not a JSON object"}',
      '{"line":5,"error":"not a JSON object"}',
      '{"id":"x","verdict":"cannot tell","unusable":["hours"]}',
      '{"id":null,"verdict":"cannot tell"}',
    ])
    expect(summary).toMatchObject({ lines: 7, unreadableLines: 3, rowsWithUnusableFields: 1 })
  })

  test('nothing in, nothing out; bad lines alone are answered too', async () => {
    expect((await run(Readable.from([]))).answers).toEqual([])
    const badRun = await run(Readable.from(['x\n'.repeat(5000)]))
    expect([badRun.answers.length, badRun.answers[4999]]).toEqual([
      5000,
      '{"line":5000,"error":"not a JSON object"}',
    ])
  })

  test('memory does not grow with the input', async () => {
    setFlagsFromString('--expose-gc')
    const collect = runInNewContext('gc') as () => void
    const line = `${JSON.stringify(randomRow(seedRandom(1), 1))}\n`
    const chunk = line.repeat(1000)
    const used = async (chunks: number): Promise<number> => {
      let most = 0
      let calls = 0
      const output = new Writable({ write: (_chunk, _encoding, done) => done() })
      const input = Readable.from(
        (function* () {
          for (let n = 0; n < chunks; n++) yield chunk
        })(),
      )
      await judgeRowLines({
        ...SET,
        catalogue: en,
        input,
        output,
        onProgress: () => {
          // Memory in use after a garbage collection: before it, the figure depends on when the collector ran.
          calls += 1
          collect()
          most = Math.max(most, process.memoryUsage().heapUsed)
        },
      })
      expect(calls).toBeGreaterThanOrEqual(Math.floor(chunks / 5))
      return most
    }
    await used(20)
    const before = await used(20)
    // Fifteen times as many lines, 75 MB of text: no text may stay in memory.
    expect((await used(300)) - before).toBeLessThan(20e6)
  })

  test('a stream that fails rejects, and misuse as well', async () => {
    const brokenStream = new Readable({
      read() {
        this.destroy(new Error('disk gone'))
      },
    })
    await expect(
      judgeRowLines({ ...SET, catalogue: en, input: brokenStream, output: new PassThrough() }),
    ).rejects.toThrow('disk gone')
    const fullDisk = new Writable({ write: (_chunk, _encoding, done) => done(new Error('disk full')) })
    await expect(
      judgeRowLines({ ...SET, catalogue: en, input: Readable.from(['{}\n']), output: fullDisk }),
    ).rejects.toThrow('disk full')
    await expect(
      judgeRowLines({
        ...SET,
        catalogue: en,
        today: 'x',
        input: Readable.from(['{}\n']),
        output: new PassThrough(),
      }),
    ).rejects.toThrow(RangeError)
  })

  test('a misspelt field is a finding with a similar name; other columns are listed once', async () => {
    const rows = [
      { id: 1, lastDate: TODAY, everyMonth: 6, customer: 'A' },
      { id: 2, lastDate: TODAY, everyMonths: 6, everyYears: 1, depot: 'north' },
      { id: 3, lastDate: TODAY, everyMonths: 6, customer: 'B', depot: 'south' },
    ]
    const { summary, answers } = await run(Readable.from(rows.map((row) => `${JSON.stringify(row)}\n`)))
    expect(answers.map((line) => JSON.parse(line))).toEqual([
      {
        id: 1,
        verdict: 'cannot tell',
        unusable: ['everyMonth'],
        findings: [
          {
            code: 'spec/unknown-key',
            severity: 'error',
            document: { kind: 'text', name: 'line 1' },
            path: '/everyMonth',
            params: { key: 'everyMonth', known: ['everyMonths'], didYouMean: 'everyMonths' },
            message: 'Unknown key "everyMonth". Did you mean "everyMonths"?',
          },
        ],
      },
      {
        id: 2,
        verdict: 'cannot tell',
        dueBy: 'period',
        dueOn: '2032-04-06',
        unusable: ['everyYears'],
        findings: [
          {
            code: 'spec/unknown-key',
            severity: 'error',
            document: { kind: 'text', name: 'line 2' },
            path: '/everyYears',
            params: {
              key: 'everyYears',
              known: ['everyHours', 'everyDistance', 'everyDistanceUnit', 'everyMonths', 'everyDays'],
            },
            message:
              'Unknown key "everyYears". Known: everyHours, everyDistance, everyDistanceUnit, everyMonths and everyDays.',
          },
        ],
      },
      { id: 3, verdict: 'not due', dueBy: 'period', dueOn: '2032-04-06' },
    ])
    expect(summary).toMatchObject({ rowsWithUnusableFields: 2, unreadColumns: ['customer', 'depot'] })
  })

  test('the names of columns that are not read do not fill the memory', async () => {
    const lines = Array.from({ length: 500 }, (_, index) => `{"id":${index},"column ${index}":1}\n`)
    const { summary } = await run(Readable.from(lines))
    expect(summary.unreadColumns).toHaveLength(20)
  })
})
