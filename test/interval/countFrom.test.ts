import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { addPeriod } from '../../src/v1/calendar.js'
import { computeDue, type DueIntervals, type DueVerdict } from '../../src/v1/interval.js'
import type { CountFrom } from '../../src/v1/spec.js'
import {
  DATE_WINDOWS,
  EXCESS_COUNTED,
  HOUR_WINDOW_ENDS,
  HOUR_WINDOWS,
  WHICHEVER_FIRST,
  WINDOW_ENDS,
} from '../published/inspectionWindows.js'
import { law } from '../support/law.js'
import { type DoneOn, log, OPTIONS, question, stated } from './support/machine.js'

const POLICIES: readonly CountFrom[] = ['completion', 'schedule inside window', 'schedule']

/** The next due point of a meter after services at these hours. */
function nextHours(
  intervals: Omit<DueIntervals, 'countFrom'>,
  countFrom: CountFrom,
  done: readonly number[],
  more: Parameters<typeof log>[0] = {},
): DueVerdict {
  // A thousand hours a day would be a jump, so the days are 50 apart.
  const records = done.map(
    (hours, index): DoneOn => ({ date: addPeriod('2000-01-01', 'P90D', index + 1), hours }),
  )
  const last = done[done.length - 1] ?? 0
  const today = addPeriod('2000-01-01', 'P90D', done.length + 1)
  return computeDue(
    question({ ...intervals, countFrom }, log({ hours: [[today, last]], records, ...more }), today),
    OPTIONS,
  )
}
const tenths = (hours: number): number => Math.round(hours * 10) / 10
const dueAt = (verdict: DueVerdict) => verdict.lines[0]?.duePoint?.meter?.value
const notes = (verdict: DueVerdict) =>
  verdict.reasons.map(({ code }) => code).filter((code) => /early|restarted/.test(code))

describe('published examples', () => {
  test.each(HOUR_WINDOWS)(
    '$interval h ± $window h due at $due, done at $done ($as): next at $next',
    (row) => {
      // The first point is the printed due point; then the interval repeats.
      const intervals = {
        first: stated({ hours: String(row.due) }),
        repeat: stated({ hours: row.interval }),
        window: stated({ hours: row.window }),
      }
      expect(dueAt(nextHours(intervals, 'schedule inside window', [row.done]))).toBe(row.next)
    },
  )

  test.each(DATE_WINDOWS)('$period ± $window due $due, done $done: next $next', (row) => {
    const intervals = {
      repeat: stated({ period: row.period }),
      window: stated({ period: row.window }),
      countFrom: 'schedule inside window',
    } as const
    const commissioned = addPeriod('1999-01-31', 'P6M', -1)
    const verdict = computeDue(
      question(intervals, log({ commissioned, records: [{ date: row.done }] }), row.done),
      OPTIONS,
    )
    expect(commissioned).toBe('1998-07-31')
    expect(verdict.lines[0]?.duePoint?.date).toBe(row.next)
  })

  test.each(WINDOW_ENDS)(
    'the window $window of $due runs from $start to $end',
    ({ window, start, due, end }) => {
      const intervals = {
        repeat: stated({ period: 'P12M' }),
        window: stated({ period: window }),
        countFrom: 'schedule inside window',
      } as const
      const commissioned = addPeriod(due, 'P12M', -1)
      const on = (done: string) =>
        computeDue(question(intervals, log({ commissioned, records: [{ date: done }] }), done), OPTIONS)
          .lines[0]?.duePoint?.date
      expect([on(start), on(end)]).toEqual([addPeriod(due, 'P12M'), addPeriod(due, 'P12M')])
      const outside = [addPeriod(start, 'P1D', -1), addPeriod(end, 'P1D')]
      expect(outside.map(on)).toEqual(outside.map((done) => addPeriod(done, 'P12M')))
      const lastDay = computeDue(question(intervals, log({ commissioned }), end), OPTIONS)
      const dayAfter = computeDue(question(intervals, log({ commissioned }), addPeriod(end, 'P1D')), OPTIONS)
      expect([lastDay.verdict, dayAfter.verdict]).toEqual(['due', 'overdue'])
    },
  )

  test.each(HOUR_WINDOW_ENDS)('$interval h ± $window h due at $due: from $start to $end', (row) => {
    const intervals = {
      first: stated({ hours: String(row.due) }),
      repeat: stated({ hours: row.interval }),
      window: stated({ hours: row.window }),
    }
    const next = (done: number) => dueAt(nextHours(intervals, 'schedule inside window', [done]))
    const scheduled = tenths(row.due + Number(row.interval))
    expect([next(row.start), next(row.end)]).toEqual([scheduled, scheduled])
    const outside = [tenths(row.start - 0.1), tenths(row.end + 0.1)]
    expect(outside.map(next)).toEqual(outside.map((done) => tenths(done + Number(row.interval))))
  })

  test('14 days or 10 hours, whichever comes first: both due points', () => {
    const { period, hours, done, due } = WHICHEVER_FIRST
    const verdict = computeDue(
      question(
        { repeat: stated({ period, hours }) },
        log({ hours: [[done.date, done.hours]], records: [done] }),
        done.date,
      ),
      OPTIONS,
    )
    const points = verdict.lines.map(({ duePoint }) => duePoint?.date ?? duePoint?.meter?.value)
    expect([...points].sort()).toEqual([due.hours, due.date].sort())
  })

  test.each(EXCESS_COUNTED)('an excess to $done h counts towards the next interval', (row) => {
    const { interval, window, done, next } = row
    const intervals = { repeat: stated({ hours: interval }), window: stated({ hours: window }) }
    expect(dueAt(nextHours(intervals, 'schedule inside window', [done]))).toBe(next)
    expect(dueAt(nextHours(intervals, 'schedule', [done]))).toBe(next)
  })
})

describe('one history, three ways to count (the table of docs/intervals.md, worked by hand)', () => {
  const intervals = { repeat: stated({ hours: '250' }), window: stated({ hours: '25' }) }
  // Every 250 h with a window of 25 h: done at 240 (10 early), 510 (10 late), 700 (50 early), 990 (40 late or more).
  const HISTORY = [240, 510, 700, 990]
  const TABLE: readonly (readonly [CountFrom, readonly number[], readonly string[]])[] = [
    ['completion', [490, 760, 950, 1240], []],
    ['schedule inside window', [500, 750, 950, 1240], ['interval/count-restarted']],
    ['schedule', [500, 750, 750, 1000], []],
  ]
  test.each(TABLE)('%s: next due at %j', (countFrom, expected, lastNotes) => {
    const verdicts = HISTORY.map((_, index) => nextHours(intervals, countFrom, HISTORY.slice(0, index + 1)))
    expect(verdicts.map(dueAt)).toEqual(expected)
    expect(verdicts.map(notes)[3]).toEqual(lastNotes)
  })

  test('an early service says what it did to the count', () => {
    expect(notes(nextHours(intervals, 'schedule', [240]))).toEqual(['interval/early-service-counts'])
    expect(notes(nextHours(intervals, 'schedule', [250, 460]))).toEqual([
      'interval/early-service-does-not-count',
    ])
    expect(notes(nextHours(intervals, 'schedule inside window', [225]))).toEqual([
      'interval/early-service-counts',
    ])
    expect(notes(nextHours(intervals, 'schedule inside window', [224.999]))).toEqual([
      'interval/count-restarted',
    ])
    expect(notes(nextHours(intervals, 'completion', [200]))).toEqual([])
  })

  test('with no window stated, a schedule takes an early service in the second half of the way for the point', () => {
    const intervalFacts = { repeat: stated({ hours: '250' }) }
    expect(dueAt(nextHours(intervalFacts, 'schedule', [125]))).toBe(250)
    expect(dueAt(nextHours(intervalFacts, 'schedule', [125.001]))).toBe(500)
    expect(dueAt(nextHours(intervalFacts, 'schedule', [250, 375]))).toBe(500)
    expect(dueAt(nextHours(intervalFacts, 'schedule', [250, 375.001]))).toBe(750)
    // A window that is not stated includes only the point itself.
    expect(dueAt(nextHours(intervalFacts, 'schedule inside window', [250]))).toBe(500)
    expect(dueAt(nextHours(intervalFacts, 'schedule inside window', [250.001]))).toBe(500.001)
  })

  test('first has a place of its own on the schedule', () => {
    const withFirst = {
      first: stated({ hours: '50' }),
      repeat: stated({ hours: '250' }),
      window: stated({ hours: '5' }),
    }
    expect(dueAt(nextHours(withFirst, 'schedule', [48]))).toBe(300)
    expect(dueAt(nextHours(withFirst, 'schedule', [48, 310]))).toBe(550)
    expect(dueAt(nextHours(withFirst, 'completion', [48]))).toBe(298)
  })

  test('a calendar schedule counts every point from its start', () => {
    const monthly = { repeat: stated({ period: 'P1M' }), countFrom: 'schedule' } as const
    const on = (records: readonly DoneOn[], today: string) =>
      computeDue(question(monthly, log({ commissioned: '2031-01-31', records }), today), OPTIONS).lines[0]
        ?.duePoint?.date
    expect(on([], '2031-02-01')).toBe('2031-02-28')
    expect(on([{ date: '2031-02-28' }], '2031-03-01')).toBe('2031-03-31')
    expect(on([{ date: '2031-02-28' }, { date: '2031-05-05' }], '2031-05-06')).toBe('2031-05-31')
  })

  test('a schedule needs the machine’s zero and every completion', () => {
    const noZero = computeDue(
      question(
        { repeat: stated({ period: 'P6M' }), countFrom: 'schedule' },
        log({ records: [{ date: '2031-01-01' }] }),
        '2031-02-01',
      ),
      OPTIONS,
    )
    expect(noZero.missing.map(({ code }) => code)).toEqual(['interval/first-use-missing'])
    const noReading = computeDue(
      question(
        { repeat: stated({ hours: '250' }), countFrom: 'schedule' },
        log({
          hours: [['2031-02-01', 300]],
          records: [{ date: '2030-06-01' }, { date: '2031-01-01', hours: 260 }],
        }),
        '2031-02-01',
      ),
      OPTIONS,
    )
    expect(noReading.missing).toEqual([
      {
        code: 'interval/reading-at-start-missing',
        params: { meter: 'hours', of: 'schedule', date: '2030-06-01' },
      },
    ])
  })

  test('a rebuild is a new zero of the schedule', () => {
    const intervals = {
      first: stated({ hours: '50' }),
      repeat: stated({ hours: '250' }),
      countFrom: 'schedule',
    } as const
    const machine = log({
      hours: [
        ['2031-01-01', 1000],
        ['2031-03-01', 1060],
      ],
      records: [{ date: '2031-02-01', hours: 1052 }],
      events: [{ kind: 'rebuild', date: '2031-01-01' }],
    })
    expect(
      computeDue(question(intervals, machine, '2031-03-01'), OPTIONS).lines[0]?.duePoint?.meter?.value,
    ).toBe(1300)
  })
})

describe('laws', () => {
  const history = fc.array(fc.integer({ min: 1, max: 900 }), { minLength: 1, maxLength: 8 }).map((gaps) => {
    let sum = 0
    return gaps.map((gap) => {
      sum += gap
      return sum
    })
  })

  test('a second calculation, point by point, agrees for every policy', () => {
    law(
      200,
      history,
      fc.constantFrom(...POLICIES),
      fc.integer({ min: 0, max: 60 }),
      (done, countFrom, window) => {
        const intervals = {
          first: stated({ hours: '100' }),
          repeat: stated({ hours: '250' }),
          window: stated({ hours: String(window) }),
        }
        // Calculated by hand: `due` is the next point, `previous` the one before it.
        let due = 100
        for (const at of done) {
          if (countFrom === 'completion') due = at + 250
          else if (countFrom === 'schedule inside window')
            due = Math.abs(at - due) <= window ? due + 250 : at + 250
          else {
            if (at >= due - window && at < due) due += 250
            while (due <= at) due += 250
          }
        }
        expect(dueAt(nextHours(intervals, countFrom, done))).toBe(due)
      },
    )
  })

  test('counted from completion, only the last service matters', () => {
    law(50, history, (done) => {
      const intervals = { repeat: stated({ hours: '250' }) }
      expect(dueAt(nextHours(intervals, 'completion', done))).toBe((done[done.length - 1] ?? 0) + 250)
    })
  })
})
