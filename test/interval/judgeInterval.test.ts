import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { computeDue, type IntervalReadings, judgeInterval } from '../../src/v1/interval.js'
import type { Interval, MachineLog } from '../../src/v1/spec.js'
import { law } from '../support/law.js'

const DAY = 86_400_000
const dateAfter = (days: number): string =>
  new Date(Date.UTC(2020, 0, 1) + days * DAY).toISOString().slice(0, 10)

const figure = fc.integer({ min: 1, max: 4000 }).map((tenths) => String(tenths / 10))
const unit = fc.constantFrom('km' as const, 'mi' as const)
const interval: fc.Arbitrary<Interval> = fc.oneof(
  {
    weight: 9,
    arbitrary: fc
      .record(
        {
          hours: figure,
          distance: fc.record({ value: figure, unit }),
          period: fc.constantFrom('P6M', 'P1Y', 'P90D', 'P2W'),
        },
        { requiredKeys: [] },
      )
      .filter((limits) => Object.keys(limits).length > 0)
      .map((limits) => ({ kind: 'interval' as const, ...limits })),
  },
  { weight: 1, arbitrary: fc.constant({ kind: 'not stated' as const }) },
)
const severeUse = fc.oneof(
  interval.map((item) => ({ kind: 'interval' as const, interval: item, criteria: 'towing' })),
  fc.constantFrom('0.5', '0.75').map((factor) => ({ kind: 'factor' as const, factor, criteria: 'towing' })),
)
const meters = fc.record(
  { hours: fc.integer({ min: 0, max: 5000 }).map((tenths) => tenths / 10), km: figure },
  {
    requiredKeys: [],
  },
)

const question = fc
  .record({
    every: interval,
    others: fc.record({ first: interval, window: interval, severe: severeUse }, { requiredKeys: [] }),
    start: fc.option(meters, { nil: undefined }),
    firstDay: fc.option(fc.integer({ min: 0, max: 100 }), { nil: undefined }),
    lastDay: fc.integer({ min: 100, max: 900 }),
    later: fc.integer({ min: 0, max: 500 }),
    now: meters,
    unit,
  })
  .map(({ every, others, start, firstDay, lastDay, later, now, unit }): IntervalReadings => {
    const day = (date: string, { hours, km }: { hours?: number; km?: string }) => ({
      date,
      ...(hours !== undefined && { hours }),
      ...(km !== undefined && { distance: { value: Number(km), unit } }),
    })
    return {
      every,
      ...others,
      ...(start && { last: day(dateAfter(lastDay), start) }),
      ...(firstDay !== undefined && { firstUse: dateAfter(firstDay) }),
      now: day(dateAfter(lastDay + later), now),
    }
  })

const resolved = (value: Interval) => {
  const trace = { path: '/services/oil', reasons: [] }
  return value.kind === 'interval'
    ? ({ kind: 'stated', value, trace } as const)
    : ({ kind: 'not stated', trace } as const)
}

/** The same question, asked with a machine's log. */
function byLog({ every, first, window, severe, last, firstUse, now }: IntervalReadings) {
  const sheet = { id: 'tind', revision: '2' }
  const hasReading = (name: 'hours' | 'distance') => now[name] !== undefined || last?.[name] !== undefined
  const log: MachineLog = {
    kind: 'machine-log',
    version: '1.0',
    id: 'two',
    name: 'Two',
    sheet,
    identity: {},
    ...(firstUse !== undefined && { commissioned: firstUse }),
    meters: {
      ...(hasReading('hours') && {
        hours: { unit: 'h', readings: now.hours === undefined ? [] : [{ date: now.date, value: now.hours }] },
      }),
      ...(hasReading('distance') && {
        distance: {
          unit: (now.distance ?? last?.distance)?.unit ?? 'km',
          readings: now.distance === undefined ? [] : [{ date: now.date, value: now.distance.value }],
        },
      }),
    },
    records: last
      ? [
          {
            kind: 'service-record',
            version: '1.0',
            id: 'spring',
            machine: 'two',
            sheet,
            detail: 'date and meters only',
            date: last.date,
            readings: {
              ...(last.hours !== undefined && { hours: { value: last.hours, unit: 'h' } }),
              ...(last.distance && { distance: last.distance }),
            },
            entries: [{ service: 'oil', gearcase: 'rear', opened: [], tightened: [], seals: [] }],
          },
        ]
      : [],
  }
  const intervals = {
    repeat: resolved(every),
    countFrom: 'completion' as const,
    ...(first && { first: resolved(first) }),
    ...(window && { window: resolved(window) }),
    ...(severe && {
      severe: severe.kind === 'factor' ? severe : { ...severe, interval: resolved(severe.interval) },
    }),
  }
  return { intervals, log, service: 'oil', gearcase: 'rear', today: now.date }
}

const SOON = { hours: 10, distance: { value: 100, unit: 'km' as const }, days: 14 }

describe('an interval and two readings', () => {
  it('have the verdict of the log that says the same', () => {
    const seen = new Map<string, number>()
    law(2000, question, (readings) => {
      const severity = readings.severe === undefined ? 'normal' : 'severe'
      const ownJudgement = judgeInterval(readings, { soon: SOON })
      expect(ownJudgement).toEqual(
        computeDue(byLog(readings), { soon: SOON, staleAfter: { days: 0 }, severity }),
      )
      seen.set(ownJudgement.verdict, (seen.get(ownJudgement.verdict) ?? 0) + 1)
    })
    console.log(JSON.stringify(Object.fromEntries(seen)))
    expect([...seen.keys()].sort()).toEqual(['cannot tell', 'due', 'due soon', 'not due', 'overdue'])
  })

  const every = { kind: 'interval', hours: '250' } as const
  const now = { date: '2023-10-06', hours: 512.6 }

  it.each([
    [
      { every, now, last: { date: '2023-10-07', hours: 300 } },
      /readings\.last\.date must be a day up to 2023-10-06/,
    ],
    [{ every, now: { date: 'today', hours: 5 } }, /readings\.now\.date must be a date/],
    [{ every, now, firstUse: '2023-13-01' }, /readings\.firstUse must be a date/],
    [{ every, now, lats: now }, /did you mean last\?/],
    [{ every, now: { ...now, hour: 3 } }, /readings\.now must not have the key .hour.; did you mean hours\?/],
    [{ every: '250 h', now }, /readings\.every must be an object/],
  ])('%j is refused', (readings, message) => {
    expect(() => judgeInterval(readings as unknown as IntervalReadings, { soon: {} })).toThrow(message)
  })

  it('a meter that was read on one of the days alone cannot be judged; one that was never read is not counted', () => {
    const twoLimits = { kind: 'interval', hours: '250', distance: { value: '2500', unit: 'mi' } } as const
    const last = { date: '2022-11-20', hours: 301.4 }
    const miles = { value: 1200, unit: 'mi' } as const
    const judge = (readings: IntervalReadings) => judgeInterval(readings, { soon: {} }).verdict
    expect(judge({ every: twoLimits, last, now })).toBe('not due')
    expect(judge({ every: twoLimits, last, now: { ...now, distance: miles } })).toBe('cannot tell')
    expect(judge({ every: twoLimits, last: { ...last, distance: miles }, now })).toBe('cannot tell')
  })
})
