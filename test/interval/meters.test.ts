import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { dateFromDay } from '../../src/calendar/dayNumbers.js'
import { meterCount } from '../../src/interval/meterCount.js'
import { countBetweenSignals, type MeterSignal } from '../../src/interval/meterSignal.js'
import { readMeters } from '../../src/v1/interval/meters.js'
import type { MachineLog } from '../../src/v1/spec.js'
import { SIGNAL_MAXIMA } from '../published/meterSignals.js'
import { law } from '../support/law.js'
import { ANYTHING } from './support/anything.js'
import { log } from './support/machine.js'

const totals = (parts: Parameters<typeof log>[0]) =>
  readMeters(log(parts)).hours?.map(({ total }) => total.value)
const problemsOf = (machine: MachineLog) =>
  readMeters(machine).findings.map(({ code, severity, path }) => [code, severity, path])

describe('events of a meter', () => {
  test('a swap carries on from the old meter’s last reading', () => {
    const events = [
      { kind: 'meter swap', date: '2030-05-20', meter: 'hours', oldReading: 812, newReading: 0 },
    ] as const
    expect(
      totals({
        hours: [
          ['2030-05-01', 800],
          ['2030-09-01', 30],
        ],
        events,
      }),
    ).toEqual([800, 842])
  })

  test('a swap to a used meter takes its first reading off', () => {
    const events = [
      { kind: 'meter swap', date: '2030-05-20', meter: 'hours', oldReading: 812, newReading: 1500 },
    ] as const
    expect(
      totals({
        hours: [
          ['2030-05-01', 800],
          ['2030-09-01', 1530],
        ],
        events,
      }),
    ).toEqual([800, 842])
  })

  test('readings of the day of the swap are put before or after it by what they show', () => {
    const events = [
      { kind: 'meter swap', date: '2030-05-20', meter: 'hours', oldReading: 812, newReading: 0 },
    ] as const
    const hours = [
      ['2030-05-01', 800],
      ['2030-05-20', 2],
      ['2030-05-20', 811],
      ['2030-05-21', 9],
    ] as const
    expect(totals({ hours, events })).toEqual([800, 811, 814, 821])
  })

  test('a reset starts again from zero', () => {
    const events = [{ kind: 'meter reset', date: '2030-05-20', meter: 'hours', oldReading: 812.5 }] as const
    expect(
      totals({
        hours: [
          ['2030-05-01', 800],
          ['2030-09-01', 30],
        ],
        events,
      }),
    ).toEqual([800, 842.5])
    // With no reading after it, the reset itself is the newest reading.
    expect(totals({ hours: [['2030-05-01', 800]], events })).toEqual([800, 812.5])
  })

  test('a rollover adds the stated limit and one of its last digit', () => {
    const events = [{ kind: 'meter rollover', date: '2030-05-20', meter: 'hours' }] as const
    expect(
      totals({
        hours: [
          ['2030-05-01', 9990],
          ['2030-09-01', 30],
        ],
        events,
        rollover: 9999,
      }),
    ).toEqual([9990, 10_030])
    expect(
      totals({
        hours: [
          ['2030-05-01', 9990],
          ['2030-09-01', 30],
        ],
        events,
        rollover: 9999.9,
      }),
    ).toEqual([9990, 10_030])
    const unstatedLog = log({
      hours: [
        ['2030-05-01', 9990],
        ['2030-09-01', 30],
      ],
      events,
    })
    expect(problemsOf(unstatedLog)).toEqual([['interval/rollover-limit-missing', 'error', '/events/0']])
    expect(readMeters(unstatedLog).hours?.map(({ stretch }) => stretch)).toEqual([0, 1])
  })

  test('a fall past a stated limit is a rollover where that is plausible, else a fall', () => {
    // With modulus M and r2 < r1, the use is r2 − r1 + M only if that is plausible (reference, rollover rule).
    const near = log({
      hours: [
        ['2030-05-01', 9990],
        ['2030-09-01', 30],
      ],
      rollover: 9999,
    })
    expect(problemsOf(near)).toEqual([['interval/rollover-assumed', 'info', '/meters/hours/readings/1']])
    expect(readMeters(near).hours?.map(({ total }) => total.value)).toEqual([9990, 10_030])
    const farLog = log({
      hours: [
        ['2030-05-01', 800],
        ['2030-06-01', 30],
      ],
      rollover: 9999,
    })
    expect(problemsOf(farLog)).toEqual([['interval/meter-falls', 'error', '/meters/hours/readings/1']])
  })
})

test('a swap without any reading is the newest reading', () => {
  const events = [
    { kind: 'meter swap', date: '2030-05-20', meter: 'hours', oldReading: 812, newReading: 30 },
  ] as const
  expect(totals({ hours: [], events })).toEqual([812])
})

describe('long logs', () => {
  // Quadratic, 200,000 readings would take more than a minute.
  const days = Array.from({ length: 200_000 }, (_, day) => day)
  const dated = (list: readonly number[]) => list.map((day) => [dateFromDay(day), day] as const)

  test('200,000 readings, the newest first, as exports often are', () => {
    const sorted = totals({ hours: dated(days) })
    const reversed = dated(days.toReversed())
    expect(totals({ hours: reversed })).toEqual(sorted)
    expect(sorted?.length).toBe(200_000)
    expect(readMeters(log({ hours: reversed })).findings.map(({ code }) => code)).toEqual(
      new Array(199_999).fill('interval/readings-out-of-order'),
    )
  })

  test('a swap every fourth day', () => {
    const events = days
      .filter((day) => day % 4 === 0)
      .map(
        (day) =>
          ({
            kind: 'meter swap',
            date: dateFromDay(day),
            meter: 'hours',
            oldReading: 6,
            newReading: 2,
          }) as const,
      )
    // Each display shows 3, 4, 5 on the days after its swap, and 6 on the day of the next.
    const hours = days.map((day) => [dateFromDay(day), 2 + (day % 4 || 4)] as const)
    expect(totals({ hours, events })?.at(-1)).toBe(2 + days.length - 1 + 4)
  })

  test('20,000 records, the newest first', () => {
    const records = days
      .slice(0, 20_000)
      .toReversed()
      .map((day) => ({ date: dateFromDay(day), hours: day }))
    expect(readMeters(log({ records, hours: [] })).hours?.length).toBe(20_000)
  })
})

describe('findings', () => {
  test('falls without an event, impossible rises, order, repetition', () => {
    expect(
      problemsOf(
        log({
          hours: [
            ['2030-05-01', 800],
            ['2030-09-01', 30],
          ],
        }),
      ),
    ).toEqual([['interval/meter-falls', 'error', '/meters/hours/readings/1']])
    // Two days, with both counted: at most 48 h.
    expect(
      problemsOf(
        log({
          hours: [
            ['2030-05-01', 100],
            ['2030-05-02', 148],
          ],
        }),
      ),
    ).toEqual([])
    expect(
      problemsOf(
        log({
          hours: [
            ['2030-05-01', 100],
            ['2030-05-02', 148.001],
          ],
        }),
      ),
    ).toEqual([['interval/meter-jumps', 'error', '/meters/hours/readings/1']])
    expect(
      problemsOf(
        log({
          km: [
            ['2030-05-01', 100],
            ['2030-05-02', 4900],
          ],
        }),
      ),
    ).toEqual([])
    expect(
      problemsOf(
        log({
          km: [
            ['2030-05-01', 100],
            ['2030-05-02', 4900.001],
          ],
        }),
      ),
    ).toEqual([['interval/meter-jumps', 'error', '/meters/distance/readings/1']])
    expect(
      problemsOf(
        log({
          hours: [
            ['2030-05-02', 110],
            ['2030-05-01', 100],
          ],
        }),
      ),
    ).toEqual([['interval/readings-out-of-order', 'info', '/meters/hours/readings/1']])
    expect(
      problemsOf(
        log({
          hours: [
            ['2030-05-02', 110],
            ['2030-05-02', 110],
          ],
        }),
      ),
    ).toEqual([['interval/reading-repeated', 'info', '/meters/hours/readings/1']])
    expect(
      totals({
        hours: [
          ['2030-05-02', 110],
          ['2030-05-02', 110],
        ],
      }),
    ).toEqual([110])
  })

  test('a record and a reading of one day that agree are no repetition', () => {
    const machine = log({ hours: [['2030-05-02', 110]], records: [{ date: '2030-05-02', hours: 110 }] })
    expect(readMeters(machine).findings).toEqual([])
  })

  test('the fall points at both readings and names the log', () => {
    const [finding] = readMeters(
      log({
        hours: [
          ['2030-05-01', 800],
          ['2030-09-01', 30],
        ],
      }),
    ).findings
    expect(finding).toEqual({
      code: 'interval/meter-falls',
      severity: 'error',
      document: { kind: 'machine-log', id: 'two' },
      path: '/meters/hours/readings/1',
      related: [{ document: { kind: 'machine-log', id: 'two' }, path: '/meters/hours/readings/0' }],
      params: {
        meter: 'hours',
        before: { value: 800, unit: 'h' },
        after: { value: 30, unit: 'h' },
        from: '2030-05-01',
        to: '2030-09-01',
      },
    })
  })

  test('values past the bounds and dates that are none are left out', () => {
    const badLog = log({
      hours: [
        ['2030-05-01', -0.001],
        ['2030-05-02', Number.NaN],
        ['2030-05-03', 1_000_000_000.001],
        ['2030-02-30', 5],
        ['2030-05-04', 7],
      ],
    })
    expect(readMeters(badLog).findings.map(({ code }) => code)).toEqual([
      'interval/reading-out-of-bounds',
      'interval/reading-out-of-bounds',
      'interval/reading-out-of-bounds',
      'calendar/not-a-date',
    ])
    expect(readMeters(badLog).hours?.length).toBe(1)
    // A value that is not a number is never read as one, even if it looks like one.
    let nest: unknown = 1
    for (let depth = 0; depth < 9000; depth += 1) nest = [nest]
    for (const value of ['412', [412], nest, true, null, undefined, 10n, Symbol('h'), Object.create(null)]) {
      const { hours, findings } = readMeters(log({ hours: [['2030-05-01', value as number]] }))
      expect([hours, findings.map(({ code }) => code)]).toEqual([[], ['interval/reading-out-of-bounds']])
      expect(JSON.stringify(findings).length).toBeLessThan(300)
      const { findings: undatedFindings } = readMeters(log({ hours: [[value as string, 412]] }))
      expect(undatedFindings.map(({ code }) => code)).toEqual(['calendar/not-a-date'])
    }
    const farLog = log({
      km: [
        ['2030-05-01', 9_000_000],
        ['2030-05-02', 9_000_000.001],
      ],
    })
    expect(readMeters(farLog).findings.map(({ code }) => code)).toEqual(['interval/reading-out-of-bounds'])
    const noText = log({
      hours: [
        [null as unknown as string, 5],
        ['2030-05-04', 7],
      ],
      events: [{ kind: 'meter reset', date: 5 as unknown as string, meter: 'hours', oldReading: 7 }],
    })
    expect(readMeters(noText).findings.map(({ code, params }) => [code, params])).toEqual([
      ['calendar/not-a-date', { text: 'null' }],
    ])
    expect(readMeters(noText).hours?.length).toBe(1)
    expect(readMeters(log({}))).toEqual({ findings: [] })
  })

  test('the error names an argument that is no log, or no list in it', () => {
    const validLog = log({ hours: [['2030-05-01', 5]], records: [{ date: '2030-05-02', hours: 9 }] })
    const expectRefused = (machine: unknown, message: string) =>
      expect(() => readMeters(machine as MachineLog)).toThrow(
        new TypeError(`${message}; parse the document first`),
      )
    expectRefused(null, 'log must be an object, got null')
    expectRefused([], 'log must be an object, got a list')
    expectRefused(
      { ...validLog, meters: { distance: null } },
      'log.meters.distance must be an object, got null',
    )
    expectRefused({ ...validLog, records: undefined }, 'log.records must be a list, got undefined')
    expectRefused({ ...validLog, records: 'none' }, "log.records must be a list, got 'none'")
    expectRefused({ ...validLog, records: [{}] }, 'log.records[0].readings must be an object, got undefined')
    for (const [events, shownValue] of ANYTHING)
      expectRefused({ ...validLog, events }, `log.events must be a list, got ${shownValue}`)
    expectRefused({ ...validLog, events: ['swap'] }, "log.events[0] must be an object, got 'swap'")
  })
})

describe('laws', () => {
  test('a display with rollovers and swaps gives back the true count', () => {
    const step = fc.record({
      days: fc.integer({ min: 1, max: 60 }),
      tenths: fc.integer({ min: 0, max: 200 }),
      swap: fc.boolean(),
    })
    law(50, fc.array(step, { minLength: 1, maxLength: 30 }), (steps) => {
      // The true count in tenths of an hour; the display rolls over after 99.9 h, and a swap sets it to a new value.
      let day = 0
      let trueCount = 0
      let display = 0
      const hours: (readonly [string, number])[] = []
      const events: NonNullable<MachineLog['events']>[number][] = []
      const trueCounts: number[] = []
      const date = (n: number) => new Date(Date.UTC(2029, 0, 1 + n)).toISOString().slice(0, 10)
      for (const { days, tenths, swap } of steps) {
        day += days
        trueCount += tenths
        display += tenths
        while (display >= 1000) {
          display -= 1000
          events.push({ kind: 'meter rollover', date: date(day), meter: 'hours' })
        }
        hours.push([date(day), display / 10])
        trueCounts.push(trueCount / 10)
        if (swap) {
          day += 1
          events.push({
            kind: 'meter swap',
            date: date(day),
            meter: 'hours',
            oldReading: display / 10,
            newReading: 0,
          })
          display = 0
          day += 1
        }
      }
      const machine = log({ hours, events, rollover: 99.9 })
      const read = readMeters(machine)
      const ownTotals = read.hours
        ?.filter(({ path }) => path.startsWith('/meters'))
        .map(({ total }) => total.value)
      expect(ownTotals).toEqual(trueCounts)
      expect(read.findings).toEqual([])
    })
  })

  test('counts are whole and half up; metres are exact up to 4,000,000 km, past which doubles are coarser than 1 µm', () => {
    law(
      500,
      fc.integer({ min: 0, max: 1_000_000_000 }),
      (thousandths) => meterCount(thousandths / 1000, 'h') === thousandths,
    )
    law(
      500,
      fc.integer({ min: 0, max: 4_000_000_000 }),
      (metres) => meterCount(metres / 1000, 'km') === metres * 1_000_000,
    )
    expect([meterCount(0.0004, 'h'), meterCount(0.0005, 'h'), meterCount(0.0015, 'h')]).toEqual([0, 1, 2])
    // In doubles 0.5005 × 1000 is 500.49999999999994: the decimal decides, not the product.
    law(
      500,
      fc.integer({ min: 0, max: 999_999_999 }),
      fc.integer({ min: 0, max: 999_999 }),
      (whole, millionths) => {
        const decimal = Number(`${whole}.${String(millionths).padStart(6, '0')}`)
        return meterCount(decimal, 'h') === whole * 1000 + Math.floor((millionths + 500) / 1000)
      },
    )
    law(
      500,
      fc.integer({ min: 0, max: 99_999_999 }),
      (thousandths) => meterCount(Number(`${thousandths}5e-4`), 'h') === thousandths + 1,
    )
  })
})

describe('signals', () => {
  test.each(SIGNAL_MAXIMA)(
    'the largest valid count of $signal ($resolution)',
    ({ signal, largest, unit }) => {
      expect(countBetweenSignals(signal, 0, 0xfaff_ffff, 1e9)).toEqual({ value: largest, unit })
    },
  )

  test('the wheel-based distance starts again past 4,211,081.215 m', () => {
    expect(countBetweenSignals('wheel-based machine distance', 4_211_081_215, 0, 1)).toEqual({
      value: 0.000_001,
      unit: 'km',
    })
    expect(countBetweenSignals('wheel-based machine distance', 100, 100, 1)).toEqual({ value: 0, unit: 'km' })
    expect(countBetweenSignals('wheel-based machine distance', 0, 1_000_000, 1)).toEqual({
      value: 1,
      unit: 'km',
    })
    expect(countBetweenSignals('wheel-based machine distance', 0, 1_000_001, 1)).toBeUndefined()
    // As a rollover this fall would be 4,211 km, so the meter was exchanged.
    expect(countBetweenSignals('wheel-based machine distance', 1000, 0, 100)).toBeUndefined()
  })

  test('any two counts differ by what was driven between them', () => {
    const raw = fc.integer({ min: 0, max: 4_211_081_215 })
    law(50, raw, fc.integer({ min: 0, max: 100_000_000 }), (earlier, driven) => {
      const later = (earlier + driven) % 4_211_081_216
      expect(countBetweenSignals('engine total hours', earlier, later, 5_000_000)?.value).toBe(driven / 20)
    })
  })

  test('misuse throws', () => {
    expect(() => countBetweenSignals('__proto__' as MeterSignal, 0, 1, 1)).toThrow(RangeError)
    expect(() => countBetweenSignals('engine total hours', -1, 0, 1)).toThrow(
      'earlierRawCount must be a whole number from 0 to 4211081215, got -1',
    )
    expect(() => countBetweenSignals('engine total hours', 0.5, 1, 1)).toThrow(RangeError)
    expect(() => countBetweenSignals('engine total hours', Number.NaN, 1, 1)).toThrow(RangeError)
    expect(() => countBetweenSignals('engine total hours', 0xfb00_0000, 0, 1)).toThrow('earlierRawCount')
    expect(() => countBetweenSignals('engine total hours', 0, 1, 0)).toThrow(
      new RangeError('maximum must be a number above 0, got 0'),
    )
    for (const [value, shownValue] of ANYTHING) {
      const raw = value as number
      const signal = 'engine total hours'
      expect(() => countBetweenSignals(value as MeterSignal, 0, 1, 1)).toThrow(
        `, wheel-based machine distance, got ${shownValue}`,
      )
      expect(() => countBetweenSignals(signal, raw, 1, 1)).toThrow(
        `earlierRawCount must be a whole number from 0 to 4211081215, got ${shownValue}`,
      )
      expect(() => countBetweenSignals(signal, 0, raw, 1)).toThrow(
        `laterRawCount must be a whole number from 0 to 4211081215, got ${shownValue}`,
      )
      expect(() => countBetweenSignals(signal, 0, 1, raw)).toThrow(
        `maximum must be a number above 0, got ${shownValue}`,
      )
    }
  })
})
