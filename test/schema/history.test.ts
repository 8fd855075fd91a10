import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { dropUndefined } from '../../src/base/dropUndefined.js'
import { en } from '../../src/v1/message/en.js'
import { renderMessage } from '../../src/v1/message.js'
import { type MachineLog, parseHistory, parseMachineLog, writeHistory } from '../../src/v1/spec.js'
import { law } from '../support/law.js'
import { readExample } from '../support/readExample.js'

const example = readExample('tind-4', 'log')
const records = example.records
const HEAD: MachineLog = {
  kind: 'machine-log',
  version: '1.0',
  id: 'two',
  name: 'Two',
  sheet: { id: 'tind', revision: '1' },
  identity: {},
  meters: { hours: { unit: 'h', readings: [] } },
  records: [],
}
const head = JSON.stringify(HEAD)
const line = (path: string, value: unknown): string => JSON.stringify({ op: 'add', path, value })

const day = fc.integer({ min: 0, max: 27 }).map((number) => `2031-03-${String(number + 1).padStart(2, '0')}`)
const readings = fc.array(
  fc.record({ date: day, value: fc.integer({ min: 0, max: 99_999 }).map((n) => n / 10) }),
  {
    maxLength: 6,
  },
)
const text = fc.string({ unit: 'grapheme', maxLength: 12 }).map((inner) => `x${inner}x`)
const orUndefined = <T>(arbitrary: fc.Arbitrary<T>) => fc.option(arbitrary, { nil: undefined })
/** Logs with and without each of their lists, which may be empty. */
const logs: fc.Arbitrary<MachineLog> = fc
  .record({
    hours: orUndefined(readings),
    distance: orUndefined(readings),
    events: orUndefined(
      fc.array(fc.record({ kind: fc.constant('rebuild' as const), date: day, note: text })),
    ),
    records: fc.array(fc.tuple(fc.constantFrom(...records), fc.integer({ min: 0, max: 999 })), {
      maxLength: 4,
    }),
    topUps: orUndefined(
      fc.array(
        fc.record({
          date: day,
          gearcase: fc.constant('rear'),
          volume: fc.record({ value: fc.integer({ min: 1, max: 900 }), unit: fc.constant('mL' as const) }),
          oil: text,
        }),
      ),
    ),
    pauses: orUndefined(fc.array(fc.record({ from: day, to: day }))),
    identity: fc.constantFrom({}, { serial: 'TL00418', modelYear: 2021 }),
  })
  .map(({ hours, distance, events, topUps, pauses, identity, records: chosen }) =>
    dropUndefined({
      ...HEAD,
      identity,
      meters: dropUndefined({
        hours: hours && { unit: 'h' as const, readings: hours },
        distance: distance && { unit: 'km' as const, readings: distance },
      }),
      events,
      topUps,
      pauses,
      records: chosen.map(([record, number]) => ({ ...record, id: `r-${number}` })),
    }),
  )

describe('the history of a log', () => {
  it('has one line for the log and one for each item of its lists', () => {
    const { hours, distance } = example.meters
    const items = [...(hours?.readings ?? []), ...(distance?.readings ?? []), ...records]
    const lines = writeHistory(example)
    expect(lines).toHaveLength(1 + items.length)
    expect(lines.slice(1).map((text) => JSON.parse(text).value)).toEqual(items)
    expect(JSON.parse(lines[0] ?? '')).toMatchObject({ id: example.id, records: [] })
    expect(lines.join('')).not.toContain('\n')
  })

  it('loses nothing: read back, it is the same log (law)', () => {
    law(200, logs, (log) => {
      const before = JSON.stringify(log)
      const read = parseHistory(writeHistory(log))
      expect(read).toEqual(parseMachineLog(log))
      expect(read).toEqual({ ok: true, value: log, findings: [] })
      expect(JSON.stringify(log)).toBe(before)
    })
  })

  it('of a log with one more record is one line longer, and the others stay (law)', () => {
    law(100, logs, (log) => {
      const more = { ...log, records: [...log.records, records[0] as (typeof records)[number]] }
      const lines = writeHistory(log)
      const read = parseHistory([...lines, line('/records/-', more.records.at(-1))])
      expect(read).toMatchObject({ ok: true, value: more })
    })
  })

  it('cut off at any byte gives the log of the whole lines, and says so (law)', () => {
    law(100, logs, fc.double({ min: 0, max: 1, noNaN: true }), (log, share) => {
      const lines = writeHistory(log)
      const text = lines.map((line) => `${line}\n`).join('')
      const from = (lines[0] ?? '').length
      const cutText = text.slice(0, from + Math.round((text.length - from) * share))
      const wholeLines = cutText.split('\n').filter((candidate) => lines.includes(candidate))
      const isCutOff = !lines.includes(cutText.trimEnd().split('\n').at(-1) ?? '')
      const read = parseHistory(cutText.split('\n'))
      expect(read).toEqual({
        ...parseHistory(wholeLines),
        findings: isCutOff
          ? [
              expect.objectContaining({
                code: 'spec/history-cut-off',
                params: { line: wholeLines.length + 1 },
              }),
            ]
          : [],
      })
    })
  })
})

describe('a line', () => {
  it('adds unknown facts and a missing list', () => {
    const lines = [
      head,
      '',
      line('/identity/serial', 'TL00418'),
      line('/use', 'severe'),
      line('/use', 'normal'),
      line('/topUps/-', {
        date: '2031-03-02',
        gearcase: 'rear',
        volume: { value: 50, unit: 'mL' },
        oil: 'GL-5',
      }),
      line('/meters/distance', { unit: 'km', readings: [] }),
      `${line('/meters/distance/readings/-', { date: '2031-03-02', value: 12 })}\r`,
    ]
    expect(parseHistory(lines)).toMatchObject({
      ok: true,
      value: {
        identity: { serial: 'TL00418' },
        use: 'normal',
        topUps: [{}],
        meters: { distance: { readings: [{}] } },
      },
    })
  })

  it.each([
    ['{"op":"add"', 'not-json'],
    ['nonsense', 'not-json'],
    ['{"op":"add","path":"/use","path":"/use","value":1}', 'repeated-key'],
    [line('/use', JSON.parse(`${'['.repeat(40)}${']'.repeat(40)}`)), 'too-deep'],
    ['[]', 'not-an-addition'],
    ['"text"', 'not-an-addition'],
    ['{"op":"remove","path":"/records/0"}', 'not-an-addition'],
    ['{"op":"replace","path":"/use","value":"severe"}', 'not-an-addition'],
    ['{"op":"add","path":"/use","value":"severe","by":"me"}', 'not-an-addition'],
    ['{"op":"add","path":1,"value":1}', 'not-an-addition'],
    [line('', {}), 'no-such-place'],
    [line('use', 'severe'), 'no-such-place'],
    [line('/id', 'three'), 'no-such-place'],
    [line('/nowhere/-', 1), 'no-such-place'],
    [line('/name/x', 1), 'no-such-place'],
    [line('/__proto__', {}), 'no-such-place'],
    [line('/__proto__/x', {}), 'no-such-place'],
    [line('/meters/distance/readings/-', {}), 'no-such-place'],
    [line('/meters/hours/readings/0', {}), 'not-at-the-end'],
    [line('/records', []), 'replaces-a-part'],
    [line('/meters', {}), 'replaces-a-part'],
    [line('/identity', {}), 'replaces-a-part'],
  ])('%s is refused', (badText, problem) => {
    const read = parseHistory([head, badText, line('/use', 'normal')], { name: 'two.jsonl' })
    expect(read.ok).toBe(false)
    const [finding] = read.findings
    expect(finding).toMatchObject({
      code: 'spec/history-line-unreadable',
      severity: 'error',
      params: { line: 2, problem },
    })
    expect(finding?.document).toEqual({ kind: 'machine-log', name: 'two.jsonl' })
    if (finding) expect(renderMessage(finding, en)).toMatch(/^Line 2 of the history cannot be used: /)
  })

  it('cannot change a record', () => {
    const change = line('/records/0/date', '2030-01-01')
    expect(parseHistory([...writeHistory(example), change])).toMatchObject({
      ok: false,
      findings: [{ params: { problem: 'no-such-place' } }],
    })
  })

  it('with a mistake in its value is found at its place in the log', () => {
    const read = parseHistory([head, line('/meters/hours/readings/-', { date: 'May', value: 1 })])
    expect(read).toMatchObject({ ok: false, findings: [{ path: '/meters/hours/readings/0/date' }] })
  })

  it('that is missing, or first and cut off, leaves no log', () => {
    expect(parseHistory([]).ok).toBe(false)
    expect(parseHistory([' ']).ok).toBe(false)
    expect(parseHistory([head.slice(0, 20)])).toMatchObject({ ok: false, findings: [{}, {}] })
    expect(() => parseHistory([1 as unknown as string])).toThrow('lines[0] must be a string, got 1')
  })
})

describe('what is no history, or no log', () => {
  it.each([
    [head, "'{"],
    [undefined, 'undefined'],
    [{}, 'an object'],
  ])('%j as lines throws', (lines, givenLines) => {
    expect(() => parseHistory(lines as never)).toThrow(`lines must be a list of strings, got ${givenLines}`)
  })

  it.each([1n, () => 1, Symbol('s'), Number.NaN, new Date(0)])('a log with %s throws', (name) => {
    expect(() => writeHistory({ ...HEAD, name: name as never })).toThrow(TypeError)
    expect(() => writeHistory({ ...HEAD, use: name as never })).toThrow(
      'log/use must be plain data; parse the document first',
    )
  })
})
