import { describe, expect, test } from 'vitest'
import { computeDue } from '../../src/v1/interval.js'
import { log, OPTIONS, question, stated } from './support/machine.js'

/**
 * State at, just below and just above each boundary, calculated by hand: every 100 h, 1000 km or six months, window 10
 * h, 100 km or two weeks, soon 20 h, 200 km or 30 days. Last service on 2031-08-31 at 256.4 h and 6400.5 km, so due at
 * 356.4 h, 7400.5 km and 2032-02-29 (a leap year; the month has no 31st); overdue past 366.4 h, 7500.5 km, 2032-03-14.
 * The steps are the meters' smallest: 0.001 h and 1 mm.
 */
const INTERVALS = {
  repeat: stated({ hours: '100', distance: { value: '1000', unit: 'km' }, period: 'P6M' }),
  window: stated({ hours: '10', distance: { value: '100', unit: 'km' }, period: 'P2W' }),
}
const SOON = { hours: 20, distance: { value: 200, unit: 'km' }, days: 30 } as const
const DONE = { date: '2031-08-31', hours: 256.4, km: 6400.5 }

const HOURS: readonly (readonly [number, string])[] = [
  [256.4, 'not due'],
  [336.399, 'not due'],
  [336.4, 'due soon'],
  [336.401, 'due soon'],
  [356.399, 'due soon'],
  [356.4, 'due'],
  [356.401, 'due'],
  [366.399, 'due'],
  [366.4, 'due'],
  [366.401, 'overdue'],
]
const DISTANCES: readonly (readonly [number, string])[] = [
  [7200.499_999, 'not due'],
  [7200.5, 'due soon'],
  [7200.500_001, 'due soon'],
  [7400.499_999, 'due soon'],
  [7400.5, 'due'],
  [7400.500_001, 'due'],
  [7500.499_999, 'due'],
  [7500.5, 'due'],
  [7500.500_001, 'overdue'],
]
const DAYS: readonly (readonly [string, string])[] = [
  ['2032-01-29', 'not due'],
  ['2032-01-30', 'due soon'],
  ['2032-01-31', 'due soon'],
  ['2032-02-28', 'due soon'],
  ['2032-02-29', 'due'],
  ['2032-03-01', 'due'],
  ['2032-03-13', 'due'],
  ['2032-03-14', 'due'],
  ['2032-03-15', 'overdue'],
]

describe('at, just below and just above each boundary', () => {
  test.each(HOURS)('%d h is %s', (hours, state) => {
    const machine = log({ hours: [['2031-09-20', hours]], km: [['2031-09-20', 6401]], records: [DONE] })
    const verdict = computeDue(question(INTERVALS, machine, '2031-09-20'), { ...OPTIONS, soon: SOON })
    expect([verdict.verdict, verdict.lines.map((line) => line.verdict)]).toEqual([
      state,
      [state, 'not due', 'not due'],
    ])
    expect(verdict.lines[0]?.duePoint).toEqual({ meter: { value: 356.4, unit: 'h' } })
    expect(verdict.lines[0]?.overdueAfter).toEqual({ meter: { value: 366.4, unit: 'h' } })
  })

  test.each(DISTANCES)('%d km is %s', (km, state) => {
    const machine = log({ hours: [['2031-09-20', 257]], km: [['2031-09-20', km]], records: [DONE] })
    const verdict = computeDue(question(INTERVALS, machine, '2031-09-20'), { ...OPTIONS, soon: SOON })
    expect([verdict.verdict, verdict.lines.map((line) => line.verdict)]).toEqual([
      state,
      ['not due', state, 'not due'],
    ])
    expect(verdict.lines[1]?.duePoint).toEqual({ meter: { value: 7400.5, unit: 'km' } })
  })

  test.each(DAYS)('on %s it is %s', (today, state) => {
    const machine = log({ hours: [[today, 257]], km: [[today, 6401]], records: [DONE] })
    const verdict = computeDue(question(INTERVALS, machine, today), { ...OPTIONS, soon: SOON })
    expect([verdict.verdict, verdict.lines.map((line) => line.verdict)]).toEqual([
      state,
      ['not due', 'not due', state],
    ])
    expect(verdict.lines[2]?.duePoint).toEqual({ date: '2032-02-29' })
    expect(verdict.lines[2]?.overdueAfter).toEqual({ date: '2032-03-14' })
  })

  test('without a window, one step past the due point is overdue', () => {
    const due = (hours: number) =>
      computeDue(
        question(
          { repeat: stated({ hours: '250' }) },
          log({ hours: [['2031-03-01', hours]], records: [{ date: '2031-02-01', hours: 6.4 }] }),
          '2031-03-01',
        ),
        OPTIONS,
      ).verdict
    // 256.4 − 6.4 ≥ 250 is false in binary fractions; in whole 1/1000 h it is true.
    expect([due(256.399), due(256.4), due(256.401)]).toEqual(['not due', 'due', 'overdue'])
  })

  test('soon by fraction is at the fraction itself', () => {
    const at = (hours: number, fraction: number) =>
      computeDue(
        question(
          { repeat: stated({ hours: '100' }) },
          log({ hours: [['2031-03-01', hours]], records: [{ date: '2031-02-01', hours: 0 }] }),
          '2031-03-01',
        ),
        { ...OPTIONS, soon: { fraction } },
      ).verdict
    expect([at(89.999, 0.9), at(90, 0.9), at(90.001, 0.9)]).toEqual(['not due', 'due soon', 'due soon'])
    // 0.07 × 100 is 7.000000000000001 in binary fractions.
    expect([at(6.999, 0.07), at(7, 0.07)]).toEqual(['not due', 'due soon'])
  })

  test('soon by fraction of a period counts its days', () => {
    // 2031-01-01 + 100 days is 2031-04-11 (31 + 28 + 31 + 10); nine tenths of it are used on the 90th day, 2031-04-01.
    const on = (today: string) =>
      computeDue(
        question({ repeat: stated({ period: 'P100D' }) }, log({ records: [{ date: '2031-01-01' }] }), today),
        {
          ...OPTIONS,
          soon: { fraction: 0.9 },
        },
      ).verdict
    expect([
      on('2031-03-31'),
      on('2031-04-01'),
      on('2031-04-10'),
      on('2031-04-11'),
      on('2031-04-12'),
    ]).toEqual(['not due', 'due soon', 'due soon', 'due', 'overdue'])
  })

  test('a reading is stale past the stated age, not at it', () => {
    const age = (today: string) =>
      computeDue(
        question(
          { repeat: stated({ hours: '250' }) },
          log({ hours: [['2031-03-01', 20]], records: [{ date: '2031-02-01', hours: 6.4 }] }),
          today,
        ),
        OPTIONS,
      )
    expect(age('2031-03-31').verdict).toBe('not due')
    const staleAge = age('2031-04-01')
    expect(staleAge.verdict).toBe('cannot tell')
    expect(staleAge.missing).toEqual([
      {
        code: 'interval/reading-stale',
        params: { meter: 'hours', date: '2031-03-01', days: 31, staleAfter: 30 },
      },
    ])
  })
})
