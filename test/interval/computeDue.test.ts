import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { computeDue, type DueOptions, type DueVerdict, type IntervalFacts } from '../../src/v1/interval.js'
import type { Interval, MachineLog, Resolved } from '../../src/v1/spec.js'
import { law } from '../support/law.js'
import { ANYTHING } from './support/anything.js'
import { type LogParts, log, OPTIONS, question, stated } from './support/machine.js'

const every250 = { repeat: stated({ hours: '250', period: 'P12M' }) }
const codes = (list: DueVerdict['reasons']) => list.map(({ code }) => code)
const judge = (
  intervals: Parameters<typeof question>[0],
  parts: LogParts,
  today: string,
  more: Partial<IntervalFacts> = {},
  options: DueOptions = OPTIONS,
) => computeDue(question(intervals, log(parts), today, more), options)

describe('what a verdict says', () => {
  test('the sentence of the brief: 100 h since 2031-01-12 at 412 h, now 519.4 h, is 7.4 h past', () => {
    const verdict = judge(
      { repeat: stated({ hours: '100' }) },
      { hours: [['2031-03-02', 519.4]], records: [{ date: '2031-01-12', hours: 412 }] },
      '2031-03-03',
    )
    const line = {
      by: 'hours',
      verdict: 'overdue',
      since: 'last service',
      from: { date: '2031-01-12', meter: { value: 412, unit: 'h' } },
      limit: { value: 100, unit: 'h' },
      printed: { value: '100', unit: 'h' },
      used: { value: 107.4, unit: 'h' },
      left: { value: -7.4, unit: 'h' },
      duePoint: { meter: { value: 512, unit: 'h' } },
      now: { date: '2031-03-02', meter: { value: 519.4, unit: 'h' } },
      fraction: 1.074,
      // 107.4 h in 49 days: 100 h are reached on day 45.6, in the 46th day after 12 January: 27 February.
      dueOn: '2031-02-27',
    }
    expect(verdict).toEqual({
      verdict: 'overdue',
      lines: [line],
      dueBy: 'hours',
      decidedBy: 'only limit',
      dueOn: '2031-02-27',
      reasons: [{ code: 'interval/by-meter', params: line }],
      missing: [],
    })
  })

  test('which limit comes first is decided by days where all are known', () => {
    // 60 h in 60 days: 250 h are reached 190 days after the reading of 2 March, on 8 September; the year ends on 1
    // January.
    const verdict = judge(
      every250,
      { hours: [['2031-03-02', 60]], records: [{ date: '2031-01-01', hours: 0 }] },
      '2031-03-03',
    )
    expect([verdict.verdict, verdict.dueBy, verdict.decidedBy, verdict.dueOn]).toEqual([
      'not due',
      'hours',
      'days',
      '2031-09-08',
    ])
  })

  test('else by the fraction used', () => {
    // One reading only, on the day of the service: no use per day. Hours used 0 of 250, calendar 30 of 365 days.
    const verdict = judge(
      every250,
      { hours: [['2031-01-01', 10]], records: [{ date: '2031-01-01', hours: 10 }] },
      '2031-01-31',
    )
    expect([verdict.dueBy, verdict.decidedBy, verdict.dueOn]).toEqual([
      'period',
      'fraction used',
      '2032-01-01',
    ])
  })

  test('a pause moves the projected day of the meter, not of the calendar', () => {
    const parts = { hours: [['2031-03-02', 60]] as const, records: [{ date: '2031-01-01', hours: 0 }] }
    const pausedJudgement = judge(
      every250,
      { ...parts, pauses: [{ from: '2031-04-01', to: '2031-05-01' }] },
      '2031-03-03',
    )
    // Thirty days out of use: 8 September becomes 8 October.
    expect(pausedJudgement.lines.map((line) => line.dueOn)).toEqual(['2031-10-08', '2032-01-01'])
    // Thirty days out of use in the history: 60 h in 30 days of use, so 190 h more take 95 days from 2 March: 5 June.
    const before = judge(
      every250,
      { ...parts, pauses: [{ from: '2031-01-10', to: '2031-02-09' }] },
      '2031-03-03',
    )
    expect(before.lines[0]?.dueOn).toBe('2031-06-05')
  })

  test('a reading does not grow stale while the machine is out of use', () => {
    const parts = { hours: [['2031-03-02', 60]] as const, records: [{ date: '2031-01-01', hours: 0 }] }
    expect(judge(every250, parts, '2031-06-01').verdict).toBe('cannot tell')
    expect(
      judge(every250, { ...parts, pauses: [{ from: '2031-03-05', to: '2031-05-31' }] }, '2031-06-01').verdict,
    ).toBe('not due')
  })

  test('the order of states: overdue, due, cannot tell, due soon, not due', () => {
    const parts = { hours: [['2031-01-01', 0]] as const, records: [{ date: '2031-01-01', hours: 0 }] }
    const soon = { ...OPTIONS, soon: { days: 400 } }
    // The hours are stale; by the calendar the service is due soon, then due, then overdue.
    expect(judge(every250, parts, '2031-06-01', {}, soon).verdict).toBe('cannot tell')
    expect(judge(every250, parts, '2032-01-01', {}, soon).verdict).toBe('due')
    expect(judge(every250, parts, '2032-01-02', {}, soon).verdict).toBe('overdue')
    expect(judge(every250, parts, '2031-01-02', {}, soon).verdict).toBe('due soon')
  })
})

describe('meters', () => {
  test('a meter that the machine lacks is listed and does not vote', () => {
    const twoLimits = { repeat: stated({ hours: '250', distance: { value: '5000', unit: 'km' } }) }
    const verdict = judge(
      twoLimits,
      { hours: [['2031-03-02', 20]], records: [{ date: '2031-03-01', hours: 0 }] },
      '2031-03-03',
    )
    expect([verdict.verdict, verdict.lines.map((line) => line.verdict)]).toEqual([
      'not due',
      ['not due', 'not tracked'],
    ])
    const none = judge(
      { repeat: stated({ hours: '250' }) },
      { records: [{ date: '2031-03-01' }] },
      '2031-03-03',
    )
    expect([none.verdict, codes(none.reasons), codes(none.missing)]).toEqual([
      'cannot tell',
      ['interval/not-tracked'],
      ['interval/no-limit-tracked'],
    ])
  })

  test('a meter without any reading, and a service without one', () => {
    const emptyJudgement = judge(every250, { hours: [], records: [{ date: '2031-01-01' }] }, '2031-01-02')
    expect([emptyJudgement.verdict, emptyJudgement.missing]).toEqual([
      'cannot tell',
      [{ code: 'interval/reading-missing', params: { meter: 'hours' } }],
    ])
    const start = judge(
      every250,
      { hours: [['2031-01-09', 40]], records: [{ date: '2031-01-01' }] },
      '2031-01-10',
    )
    expect([start.verdict, start.missing]).toEqual([
      'cannot tell',
      [
        {
          code: 'interval/reading-at-start-missing',
          params: { meter: 'hours', of: 'last service', date: '2031-01-01' },
        },
      ],
    ])
    // A reading of the same day in the meter's own list is enough.
    const sameJudgement = judge(
      every250,
      {
        hours: [
          ['2031-01-01', 30],
          ['2031-01-09', 40],
        ],
        records: [{ date: '2031-01-01' }],
      },
      '2031-01-10',
    )
    expect([sameJudgement.verdict, sameJudgement.lines[0]?.used]).toEqual([
      'not due',
      { value: 10, unit: 'h' },
    ])
  })

  const SWAP = {
    kind: 'meter swap',
    date: '2031-02-01',
    meter: 'hours',
    oldReading: 812,
    newReading: 5,
  } as const

  test('through a swap the due point is given as the new display shows it', () => {
    const verdict = judge(
      { repeat: stated({ hours: '100' }) },
      { hours: [['2031-03-01', 45]], records: [{ date: '2031-01-01', hours: 780 }], events: [SWAP] },
      '2031-03-01',
    )
    // 32 h on the old meter and 40 h on the new one; 28 h left, at 73 h.
    expect(verdict.lines[0]).toMatchObject({
      used: { value: 72, unit: 'h' },
      left: { value: 28, unit: 'h' },
      from: { meter: { value: 780, unit: 'h' } },
      duePoint: { meter: { value: 73, unit: 'h' } },
    })
    // 780 + 100 − 807 = 73, so a reader can check it.
    expect(verdict.reasons[0]).toEqual({
      code: 'interval/display-changed',
      params: { meter: 'hours', less: { value: 807, unit: 'h' } },
    })
  })

  test('a display that was changed before the count began is not spoken of', () => {
    const log = {
      hours: [
        ['2031-01-01', 780],
        ['2031-04-01', 45],
      ],
      events: [SWAP],
    } as const
    const since = (date: string, hours: number) =>
      codes(
        judge({ repeat: stated({ hours: '100' }) }, { ...log, records: [{ date, hours }] }, '2031-04-01')
          .reasons,
      )
    expect(since('2031-03-01', 20)).not.toContain('interval/display-changed')
    expect(since('2031-01-15', 800)).toContain('interval/display-changed')
  })

  test('nothing is subtracted across an unexplained fall of the meter', () => {
    const verdict = judge(
      { repeat: stated({ hours: '100' }) },
      { hours: [['2031-03-01', 45]], records: [{ date: '2031-01-01', hours: 780 }] },
      '2031-03-01',
    )
    expect([verdict.verdict, codes(verdict.reasons), verdict.missing]).toEqual([
      'cannot tell',
      ['interval/meter-falls'],
      [{ code: 'interval/meter-broken', params: { meter: 'hours', from: '2031-01-01', to: '2031-03-01' } }],
    ])
  })

  test('miles and kilometres are compared exactly', () => {
    // 1000 mi are 1609.344 km exactly.
    const at = (km: number) =>
      judge(
        { repeat: stated({ distance: { value: '1000', unit: 'mi' } }) },
        { km: [['2031-02-01', km]], records: [{ date: '2031-01-01', km: 0 }] },
        '2031-02-01',
      ).verdict
    expect([at(1609.343_999), at(1609.344), at(1609.344_001)]).toEqual(['not due', 'due', 'overdue'])
  })

  test('of two round numbers the shorter decides', () => {
    // 5000 km (3000 mi): 3000 mi are 4828.032 km.
    const interval = {
      repeat: stated({ distance: { value: '5000', unit: 'km', printed: [{ value: '3000', unit: 'mi' }] } }),
    }
    const verdict = judge(
      interval,
      { km: [['2031-02-01', 4828.032]], records: [{ date: '2031-01-01', km: 0 }] },
      '2031-02-01',
    )
    expect([verdict.verdict, verdict.lines[0]?.limit]).toEqual(['due', { value: 3000, unit: 'mi' }])
    const otherCase = {
      repeat: stated({ distance: { value: '3000', unit: 'mi', printed: [{ value: '5000', unit: 'km' }] } }),
    }
    expect(
      judge(
        otherCase,
        { km: [['2031-02-01', 4828.031]], records: [{ date: '2031-01-01', km: 0 }] },
        '2031-02-01',
      ).verdict,
    ).toBe('not due')
  })
})

describe('first service, rebuild and use', () => {
  const intervals = { first: stated({ hours: '50' }), repeat: stated({ hours: '250', period: 'P12M' }) }

  test('first counts from the machine’s zero until it is done, then repeat', () => {
    const before = judge(intervals, { commissioned: '2031-01-01', hours: [['2031-02-01', 50]] }, '2031-02-01')
    expect([before.verdict, before.lines[0]?.from]).toEqual([
      'due',
      { date: '2031-01-01', meter: { value: 0, unit: 'h' } },
    ])
    // A limit that `first` lacks is that of `repeat`.
    expect(before.lines[1]?.limit).toEqual({ period: 'P12M' })
    const after = judge(
      intervals,
      {
        commissioned: '2031-01-01',
        hours: [['2031-02-01', 299]],
        records: [{ date: '2031-01-20', hours: 49 }],
      },
      '2031-02-01',
    )
    expect([after.verdict, after.lines[0]?.left]).toEqual(['due', { value: 0, unit: 'h' }])
  })

  test('without a date of first use the calendar limit is undecided, the hour limit is not', () => {
    const verdict = judge(intervals, { hours: [['2031-02-01', 51]] }, '2031-02-01')
    expect([verdict.verdict, verdict.lines.map((line) => line.verdict), codes(verdict.missing)]).toEqual([
      'overdue',
      ['overdue', 'cannot tell'],
      ['interval/first-use-missing'],
    ])
  })

  test('after a rebuild of this gearcase, the first interval applies again', () => {
    const rebuild = (gearcases?: readonly string[]): MachineLog['events'] => [
      { kind: 'rebuild', date: '2031-05-01', ...(gearcases && { gearcases }) },
    ]
    const parts = {
      commissioned: '2030-01-01',
      hours: [
        ['2031-05-01', 400],
        ['2031-06-01', 451],
      ] as const,
      records: [{ date: '2031-04-01', hours: 390 }],
    }
    const rebuiltJudgement = judge(intervals, { ...parts, events: rebuild(['rear']) }, '2031-06-01')
    expect([rebuiltJudgement.verdict, rebuiltJudgement.lines[0]?.duePoint]).toEqual([
      'overdue',
      { meter: { value: 450, unit: 'h' } },
    ])
    expect(judge(intervals, { ...parts, events: rebuild(['front']) }, '2031-06-01').verdict).toBe('not due')
    expect(judge(intervals, { ...parts, events: rebuild() }, '2031-06-01').verdict).toBe('overdue')
    const noReading = judge(
      intervals,
      { ...parts, hours: [['2031-06-01', 451]], events: rebuild() },
      '2031-06-01',
    )
    expect(noReading.missing).toEqual([
      {
        code: 'interval/reading-at-start-missing',
        params: { meter: 'hours', of: 'rebuild', date: '2031-05-01' },
      },
    ])
    const judgement = judge(
      intervals,
      { ...parts, records: [...parts.records, { date: '2031-05-20', hours: 440 }], events: rebuild() },
      '2031-06-01',
    )
    expect([judgement.verdict, judgement.lines[0]?.left]).toEqual(['not due', { value: 239, unit: 'h' }])
  })

  test('what if: severe by interval, by factor, or not given', () => {
    const parts = { hours: [['2031-03-01', 130]] as const, records: [{ date: '2031-02-20', hours: 0 }] }
    const severeOptions = { ...OPTIONS, severity: 'severe' } as const
    const byInterval = {
      ...every250,
      severe: { kind: 'interval', interval: stated({ hours: '125' }), criteria: 'wading' },
    } as const
    expect(judge(byInterval, parts, '2031-03-01').verdict).toBe('not due')
    const overdueJudgement = judge(byInterval, parts, '2031-03-01', {}, severeOptions)
    expect([overdueJudgement.verdict, overdueJudgement.lines.map((line) => line.limit)]).toEqual([
      'overdue',
      [{ value: 125, unit: 'h' }, { period: 'P12M' }],
    ])
    const byFactor = { ...every250, severe: { kind: 'factor', factor: '0.5', criteria: 'wading' } } as const
    expect(judge(byFactor, parts, '2031-03-01', {}, severeOptions).lines.map((line) => line.limit)).toEqual([
      { value: 125, unit: 'h' },
      { period: 'P6M' },
    ])
    const none = judge(every250, parts, '2031-03-01', {}, severeOptions)
    expect([none.verdict, codes(none.reasons)[0]]).toEqual(['not due', 'interval/severe-not-given'])
  })

  test('a factor never makes a fractional month', () => {
    const severeOptions = { ...OPTIONS, severity: 'severe' } as const
    const parts = { hours: [['2031-03-01', 10]] as const, records: [{ date: '2031-02-20', hours: 0 }] }
    const factor = (period: string, value: string) =>
      judge(
        {
          repeat: stated({ hours: '250', period }),
          severe: { kind: 'factor', factor: value, criteria: 'dust' },
        },
        parts,
        '2031-03-01',
        {},
        severeOptions,
      )
    expect(factor('P3M', '0.5').verdict).toBe('cannot tell')
    expect(factor('P3M', '0.5').missing).toEqual([
      { code: 'interval/fractional-period', params: { period: 'P3M', factor: '0.5' } },
    ])
    expect(factor('P3M', '0.5').lines.map((line) => line.verdict)).toEqual(['not due', 'cannot tell'])
    expect(factor('P1Y', '0.75').lines[1]?.limit).toEqual({ period: 'P9M' })
    expect(factor('P2W', '0.5').lines[1]?.limit).toEqual({ period: 'P7D' })
    expect(factor('P1M2W', '2').lines[1]?.limit).toEqual({ period: 'P2M28D' })
    // 250 h × 0.333333 = 83.33325 h, which is 83.333 h in whole 1/1000 h.
    expect(factor('P3M', '0.333333').lines[0]?.limit).toEqual({ value: 83.333, unit: 'h' })
  })
})

describe('events, instances and services that count', () => {
  const submerged = { kind: 'submersion', date: '2031-03-10' } as const
  const parts = { hours: [['2031-03-12', 12]] as const, records: [{ date: '2031-03-01', hours: 0 }] }

  test('an event makes its services due until they are done', () => {
    const events = ['submersion'] as const
    const due = judge(every250, { ...parts, events: [submerged] }, '2031-03-12', { events })
    expect([due.verdict, due.dueBy, due.decidedBy, due.dueOn]).toEqual([
      'due',
      'event',
      'event',
      '2031-03-10',
    ])
    expect(judge(every250, { ...parts, events: [submerged] }, '2031-03-12').verdict).toBe('not due')
    expect(
      judge(every250, { ...parts, events: [{ ...submerged, gearcases: ['front'] }] }, '2031-03-12', {
        events,
      }).verdict,
    ).toBe('not due')
    const judgement = {
      ...parts,
      records: [...parts.records, { date: '2031-03-10', hours: 11 }],
      events: [submerged],
    }
    expect(judge(every250, judgement, '2031-03-12', { events }).verdict).toBe('not due')
    const later = judge(every250, { ...parts, events: [submerged] }, '2031-03-09', { events })
    expect([later.verdict, codes(later.reasons)]).toContainEqual('not due')
    expect(codes(later.reasons)).toContain('interval/date-in-the-future')
  })

  test('an event is due even where the interval is not stated', () => {
    const notStated: Resolved<Interval> = {
      kind: 'not stated',
      trace: { path: '/services/change', reasons: [] },
    }
    const verdict = judge({ repeat: notStated }, { ...parts, events: [submerged] }, '2031-03-12', {
      events: ['submersion'],
    })
    expect([verdict.verdict, codes(verdict.missing)]).toEqual(['due', ['interval/interval-not-stated']])
  })

  test('an instance counts its own records and those that name none', () => {
    const judgeHub = (instance: string | undefined, records: LogParts['records']) =>
      judge(
        { repeat: stated({ period: 'P6M' }) },
        { commissioned: '2030-01-01', records: records ?? [] },
        '2031-03-12',
        instance === undefined ? {} : { instance },
      )
    expect(judgeHub('left', [{ date: '2031-03-01', instance: 'left' }]).verdict).toBe('not due')
    expect(judgeHub('right', [{ date: '2031-03-01', instance: 'left' }]).verdict).toBe('overdue')
    const hubService = judgeHub('right', [{ date: '2031-03-01' }])
    expect([hubService.verdict, codes(hubService.reasons)[0]]).toEqual([
      'not due',
      'interval/record-for-all-instances',
    ])
    expect(judgeHub(undefined, [{ date: '2031-03-01', instance: 'left' }]).verdict).toBe('overdue')
  })

  test('a service that satisfies this one counts; another gearcase or service does not', () => {
    const records = [{ date: '2031-03-01', hours: 0, service: 'overhaul' }]
    const otherCase = judge(every250, { ...parts, records }, '2031-03-12', { doneBy: ['overhaul'] })
    expect([otherCase.verdict, codes(otherCase.reasons)[0]]).toEqual([
      'not due',
      'interval/done-by-other-service',
    ])
    const not = judge(every250, { ...parts, commissioned: '2029-01-01', records }, '2031-03-12')
    expect(not.verdict).toBe('overdue')
    const front = judge(
      every250,
      {
        ...parts,
        commissioned: '2029-01-01',
        records: [{ date: '2031-03-01', hours: 0, gearcase: 'front' }],
      },
      '2031-03-12',
    )
    expect(front.verdict).toBe('overdue')
  })

  test('a record dated after today is named and not counted', () => {
    const verdict = judge(
      { repeat: stated({ period: 'P6M' }) },
      { commissioned: '2030-01-01', records: [{ date: '2031-03-13' }] },
      '2031-03-12',
    )
    expect([verdict.verdict, codes(verdict.reasons)[0]]).toEqual(['overdue', 'interval/date-in-the-future'])
  })
})

describe('facts that the sheet does not state', () => {
  const cannotTell: Resolved<Interval> = { kind: 'cannot tell', missing: ['variant'], candidates: [] }
  const parts = { hours: [['2031-03-12', 260]] as const, records: [{ date: '2031-03-01', hours: 0 }] }

  test('an interval that depends on the variant names it', () => {
    const verdict = judge({ repeat: cannotTell }, parts, '2031-03-12')
    expect([verdict.verdict, verdict.lines, verdict.missing]).toEqual([
      'cannot tell',
      [],
      [{ code: 'interval/interval-depends', params: { which: 'repeat', facts: ['variant'] } }],
    ])
  })

  test('first is needed before it is done only', () => {
    const intervals = { first: cannotTell, repeat: stated({ hours: '250' }) }
    expect(judge(intervals, parts, '2031-03-12').verdict).toBe('overdue')
    expect(judge(intervals, { hours: [['2031-03-12', 260]] }, '2031-03-12').verdict).toBe('cannot tell')
  })

  test('a severe interval or a window that is not known', () => {
    const severeOptions = {
      repeat: stated({ hours: '250' }),
      severe: { kind: 'interval', interval: cannotTell, criteria: 'mud' },
    } as const
    expect(judge(severeOptions, parts, '2031-03-12', {}, { ...OPTIONS, severity: 'severe' }).verdict).toBe(
      'cannot tell',
    )
    const window = judge({ repeat: stated({ hours: '250' }), window: cannotTell }, parts, '2031-03-12')
    expect([window.verdict, window.missing]).toEqual([
      'due',
      [{ code: 'interval/interval-depends', params: { which: 'window', facts: ['variant'] } }],
    ])
  })

  test('a limit of zero and a due date past the calendar are `cannot tell`', () => {
    expect(codes(judge({ repeat: stated({ hours: '0' }) }, parts, '2031-03-12').missing)).toEqual([
      'interval/limit-not-above-zero',
    ])
    expect(codes(judge({ repeat: stated({ period: 'P0D' }) }, parts, '2031-03-12').missing)).toEqual([
      'interval/limit-not-above-zero',
    ])
    expect(codes(judge({ repeat: stated({ period: 'P9000Y' }) }, parts, '2031-03-12').missing)).toEqual([
      'interval/due-date-out-of-calendar',
    ])
  })
})

describe('laws', () => {
  const machine = fc.record({
    start: fc.integer({ min: 0, max: 500_000 }),
    used: fc.integer({ min: 0, max: 400_000 }),
    every: fc.integer({ min: 1, max: 300_000 }),
  })
  const state = (start: number, used: number, every: number) =>
    judge(
      { repeat: stated({ hours: String(every / 1000) }) },
      {
        hours: [['2031-03-12', (start + used) / 1000]],
        records: [{ date: '2031-02-01', hours: start / 1000 }],
      },
      '2031-03-12',
    ).verdict

  test('meters agree with whole numbers, whatever binary fractions say', () => {
    law(300, machine, ({ start, used, every }) => {
      expect(state(start, used, every)).toBe(used > every ? 'overdue' : used === every ? 'due' : 'not due')
    })
  })

  test('more use never makes it less due', () => {
    const rank = ['overdue', 'due', 'cannot tell', 'due soon', 'not due']
    law(50, machine, fc.integer({ min: 0, max: 1000 }), ({ start, used, every }, more) => {
      return rank.indexOf(state(start, used + more, every)) <= rank.indexOf(state(start, used, every))
    })
  })

  test('the order of readings and records does not matter, and nothing given is changed', () => {
    const readings = fc.uniqueArray(fc.integer({ min: 1, max: 28 }), { minLength: 1, maxLength: 8 })
    law(50, readings, fc.infiniteStream(fc.nat()), (days, random) => {
      const day = (n: number) => `2031-02-${String(n).padStart(2, '0')}`
      const hours = days.map((n) => [day(n), n * 3] as const)
      const records = days.map((n) => ({ date: day(n), hours: n * 3 }))
      const shuffle = <T>(list: readonly T[]): T[] =>
        list
          .map((item) => [random.next().value, item] as const)
          .sort(([a], [b]) => a - b)
          .map(([, item]) => item)
      const sorted = days.toSorted((otherDay, other) => otherDay - other)
      const base = judge(
        every250,
        {
          hours: sorted.map((n) => [day(n), n * 3] as const),
          records: sorted.map((n) => ({ date: day(n), hours: n * 3 })),
        },
        '2031-03-01',
      )
      const parts = { hours: shuffle(hours), records: shuffle(records) }
      const asked = question(every250, log(parts), '2031-03-01')
      const copy = structuredClone(asked)
      expect(computeDue(asked, OPTIONS)).toEqual(base)
      expect(asked).toEqual(copy)
    })
  })

  test('a verdict is plain JSON', () => {
    law(50, machine, ({ start, used, every }) => {
      const verdict = judge(
        { repeat: stated({ hours: String(every / 1000), period: 'P6M' }) },
        {
          hours: [['2031-03-12', (start + used) / 1000]],
          records: [{ date: '2031-02-01', hours: start / 1000 }],
        },
        '2031-03-12',
      )
      expect(JSON.parse(JSON.stringify(verdict))).toEqual(verdict)
    })
  })
})

describe('bad input', () => {
  const validQuestion = question(
    every250,
    log({ hours: [['2031-03-12', 260]], records: [{ date: '2031-03-01', hours: 0 }] }),
    '2031-03-12',
  )
  const ask =
    (change: object, options: object = {}) =>
    () =>
      computeDue({ ...validQuestion, ...change } as IntervalFacts, { ...OPTIONS, ...options } as DueOptions)

  test('a missing or wrong option is named', () => {
    expect(ask({}, { soon: undefined })).toThrow('options.soon must be an object, got undefined')
    expect(ask({}, { staleAfter: undefined })).toThrow('options.staleAfter must be an object, got undefined')
    expect(ask({}, { staleAfter: { days: Number.NaN } })).toThrow(
      /^options\.staleAfter\.days must be a number from 0 to [0-9]+, got NaN$/,
    )
    expect(ask({}, { staleAfter: { days: '30' } })).toThrow(TypeError)
    expect(ask({}, { severity: 'hard' })).toThrow("options.severity must be normal or severe, got 'hard'")
    expect(ask({}, { soon: { hours: -1 } })).toThrow(
      /^options\.soon\.hours must be a number from 0 to [0-9]+, got -1$/,
    )
    expect(ask({}, { soon: { days: Number.POSITIVE_INFINITY } })).toThrow(RangeError)
    expect(ask({}, { soon: { fraction: 1.01 } })).toThrow('from 0 to 1')
    expect(ask({}, { soon: { distance: { value: 5, unit: 'm' } } })).toThrow('km or mi')
    expect(ask({}, { soon: { distance: { value: Number.NaN, unit: 'km' } } })).toThrow(RangeError)
    expect(() => computeDue(validQuestion, null as unknown as DueOptions)).toThrow(TypeError)
    expect(() => computeDue(null as unknown as IntervalFacts, OPTIONS)).toThrow(TypeError)
    expect(ask({ today: '2031-02-30' })).toThrow("facts.today must be a date YYYY-MM-DD, got '2031-02-30'")
    expect(ask({ today: 5 })).toThrow(TypeError)
  })

  test('an unknown option or fact is refused by name, with a similar one', () => {
    expect(ask({}, { soon: { hour: 10 } })).toThrow(
      new TypeError("options.soon must not have the key 'hour'; did you mean hours?"),
    )
    expect(ask({}, { stale: { days: 1 } })).toThrow("options must not have the key 'stale'")
    expect(ask({}, { staleAfter: { days: 1, hours: 2 } })).toThrow(
      "options.staleAfter must not have the key 'hours'",
    )
    expect(ask({ instances: 'left' })).toThrow(
      "facts must not have the key 'instances'; did you mean instance?",
    )
  })

  test('an option of any kind is named, whatever it is', () => {
    for (const [value, shownValue] of ANYTHING) {
      expect(ask({}, { severity: value })).toThrow(
        `options.severity must be normal or severe, got ${shownValue}`,
      )
      expect(ask({}, { soon: { hours: value } })).toThrow(
        `options.soon.hours must be a number from 0 to 1000000000, got ${shownValue}`,
      )
      expect(ask({ today: value })).toThrow(`facts.today must be a date YYYY-MM-DD, got ${shownValue}`)
    }
  })

  test('the error names an argument that is no question, interval or log', () => {
    const expectRefused = (change: object, message: string) =>
      expect(ask(change)).toThrow(new TypeError(`${message}; parse the document first`))
    expect(() => computeDue(undefined as unknown as IntervalFacts, OPTIONS)).toThrow(
      new TypeError('facts must be an object, got undefined; parse the document first'),
    )
    expectRefused({ intervals: undefined }, 'facts.intervals must be an object, got undefined')
    expectRefused({ intervals: {} }, 'facts.intervals.repeat must be an object, got undefined')
    expectRefused(
      { intervals: { ...validQuestion.intervals, first: null, countFrom: 'schedule' } },
      'facts.intervals.first must be an object, got null',
    )
    expectRefused({ log: 'two' }, "facts.log must be an object, got 'two'")
    expectRefused({ log: {} }, 'facts.log.meters must be an object, got undefined')
    const { log: two } = validQuestion
    expectRefused({ log: { ...two, records: {} } }, 'facts.log.records must be a list, got an object')
    expectRefused({ log: { ...two, records: [null] } }, 'facts.log.records[0] must be an object, got null')
    expectRefused(
      { log: { ...two, records: [...two.records, { ...two.records[0], entries: undefined }] } },
      'facts.log.records[1].entries must be a list, got undefined',
    )
    expectRefused({ log: { ...two, events: [5] } }, 'facts.log.events[0] must be an object, got 5')
    expectRefused(
      { log: { ...two, meters: { hours: { unit: 'h' } } } },
      'facts.log.meters.hours.readings must be a list, got undefined',
    )
  })

  test.each(['', '250 h', '1e3', '-5', ' 250', '0x10', 'NaN', '9999999999', '0100'])(
    'the figure %j is refused',
    (hours) => {
      expect(ask({ intervals: { ...every250, countFrom: 'completion', repeat: stated({ hours }) } })).toThrow(
        RangeError,
      )
    },
  )

  test('a period or factor that is none is refused', () => {
    expect(ask({ intervals: { countFrom: 'completion', repeat: stated({ period: 'PT500H' }) } })).toThrow(
      "intervals.repeat.period must be a period such as P6M, got 'PT500H'",
    )
    for (const [hours, shownValue] of ANYTHING)
      expect(
        ask({
          intervals: { countFrom: 'completion', repeat: stated({ hours: hours as unknown as string }) },
        }),
      ).toThrow(
        `intervals.repeat.hours must be a decimal such as '250' in the meter's range, got ${shownValue}`,
      )
    expect(
      ask(
        {
          intervals: {
            ...every250,
            countFrom: 'completion',
            severe: { kind: 'factor', factor: 'half', criteria: '' },
          },
        },
        { severity: 'severe' },
      ),
    ).toThrow("intervals.severe.factor must be a decimal such as '0.5', got 'half'")
  })

  test('invalid meter values are left out with a reason', () => {
    for (const value of [Number.NaN, -1, Number.POSITIVE_INFINITY, 1e300]) {
      const verdict = judge(
        every250,
        {
          hours: [
            ['2031-03-11', value],
            ['2031-03-12', 260],
          ],
          records: [{ date: '2031-03-01', hours: 0 }],
        },
        '2031-03-12',
      )
      expect([verdict.verdict, codes(verdict.reasons)[0]]).toEqual([
        'overdue',
        'interval/reading-out-of-bounds',
      ])
    }
    const date = judge(
      every250,
      {
        hours: [
          ['2031-02-30', 5],
          ['2031-03-12', 260],
        ],
        records: [{ date: '2031-03-01', hours: 0 }],
      },
      '2031-03-12',
    )
    expect([date.verdict, codes(date.reasons)[0]]).toEqual(['overdue', 'calendar/not-a-date'])
  })

  test('hostile ids are only compared', () => {
    for (const id of ['__proto__', 'constructor', 'x'.repeat(100_000)]) {
      expect(ask({ service: id, gearcase: id, instance: id, doneBy: [id], events: [id] })().verdict).toBe(
        'overdue',
      )
    }
  })
})
