import fc from 'fast-check'
import { erf } from 'mathjs'
import { describe, expect, test } from 'vitest'
import { calculateNormalDeviate, fitTheilSen } from '../../src/interval/fitTheilSen.js'
import { type ForecastFacts, type ForecastOptions, forecastDue } from '../../src/v1/interval/meters.js'
import { SEN_1968, SMALL } from '../published/sen1968.js'
import { addDays } from '../support/addDays.js'
import { law } from '../support/law.js'
import { ANYTHING } from './support/anything.js'
import { backTest, GENERATORS } from './support/backTest.js'
import { log } from './support/machine.js'

const OPTIONS: ForecastOptions = { confidence: 0.8, scatter: 'from day to day' }
const LINE: ForecastOptions = { confidence: 0.8, scatter: 'about a steady line' }
const ask = (parts: Parameters<typeof log>[0], dueAt: number, today: string, options = OPTIONS) =>
  forecastDue({ log: log(parts), meter: 'hours', dueAt: { value: dueAt, unit: 'h' }, today }, options)

describe('Theil–Sen', () => {
  test('Sen’s own example', () => {
    const fit = fitTheilSen(SEN_1968.x, SEN_1968.y, SEN_1968.confidence)
    expect(fit?.slope).toBe(SEN_1968.slope)
    expect(fit?.lowSlope.toFixed(2)).toBe(SEN_1968.low)
    expect(fit?.highSlope.toFixed(2)).toBe(SEN_1968.high)
    expect(fit?.intercept).toBe(SEN_1968.intercept)
  })

  test.each(SMALL)('y $y at x $x has slope $slope', ({ x, y, slope, intercept }) => {
    const fit = fitTheilSen(x, y, 0.8)
    expect([fit?.slope, fit?.intercept]).toEqual([slope, intercept])
  })

  test('pairs of equal x are passed over, and nothing but such pairs gives nothing', () => {
    expect(fitTheilSen([1, 1, 2], [5, 5, 7], 0.8)?.slope).toBe(2)
    expect(fitTheilSen([3, 3, 3], [1, 2, 3], 0.8)).toBeUndefined()
    expect(fitTheilSen([], [], 0.8)).toBeUndefined()
  })

  test('points on a line give it back, and limits lie on both sides', () => {
    const points = fc.uniqueArray(fc.integer({ min: -1000, max: 1000 }), { minLength: 2, maxLength: 30 })
    law(
      50,
      points,
      fc.integer({ min: -50, max: 50 }),
      fc.integer({ min: -99, max: 99 }),
      (x, slope, intercept) => {
        const fit = fitTheilSen(
          x,
          x.map((at) => slope * at + intercept),
          0.8,
        )
        expect([fit?.slope, fit?.lowSlope, fit?.highSlope]).toEqual([slope, slope, slope])
        expect(fit?.intercept).toBe(intercept)
      },
    )
    const pairs = fc.array(fc.tuple(fc.integer({ min: 0, max: 99 }), fc.integer({ min: 0, max: 99 })), {
      minLength: 2,
      maxLength: 25,
    })
    law(50, pairs, fc.double({ min: 0.01, max: 0.99, noNaN: true }), (list, confidence) => {
      const fit = fitTheilSen(
        list.map(([x]) => x),
        list.map(([, y]) => y),
        confidence,
      )
      return fit === undefined || (fit.lowSlope <= fit.slope && fit.slope <= fit.highSlope)
    })
  })

  test('misuse throws', () => {
    expect(() => fitTheilSen([1], [1, 2], 0.8)).toThrow('x and y must have the same length, got 1 and 2')
    expect(() => fitTheilSen([1, Number.NaN], [1, 2], 0.8)).toThrow(RangeError)
    expect(() => fitTheilSen([1, 2], [1, Number.POSITIVE_INFINITY], 0.8)).toThrow(RangeError)
    for (const confidence of [0, 1, Number.NaN, -1, 2])
      expect(() => fitTheilSen([1, 2], [1, 2], confidence)).toThrow(RangeError)
    const list = [1, 2]
    for (const [value, shownValue] of ANYTHING) {
      expect(() => fitTheilSen(value as number[], list, 0.8)).toThrow(
        `x must be a list of numbers, got ${shownValue}`,
      )
      expect(() => fitTheilSen(list, value as number[], 0.8)).toThrow(
        `y must be a list of numbers, got ${shownValue}`,
      )
      expect(() => fitTheilSen(list, [1, value as number], 0.8)).toThrow(
        `y[1] must be a finite number, got ${shownValue}`,
      )
      expect(() => fitTheilSen(list, list, value as number)).toThrow(
        `confidence must be a number above 0 and below 1, got ${shownValue}`,
      )
    }
  })
})

describe('the normal deviate', () => {
  test('is right to 14 digits, by the error function of mathjs', () => {
    law(500, fc.double({ min: 1e-6, max: 1 - 1e-6, noNaN: true }), (confidence) => {
      const z = calculateNormalDeviate(confidence)
      expect(z).toBeGreaterThan(0)
      expect(Math.abs(erf(z / Math.SQRT2) - confidence)).toBeLessThan(2e-15)
    })
    // NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.6.7.1: P(|Z| ≤ 1.96) = 2 × 0.47500 (from memory)
    expect(calculateNormalDeviate(0.95)).toBeCloseTo(1.96, 3)
    expect(calculateNormalDeviate(1 - 2 ** -53)).toBeGreaterThan(8)
  })
})

describe('a due point that falls on a day exactly', () => {
  test('is that day: 170.4 h in 56 days, 170.4 h to go', () => {
    const forecast = ask(
      {
        hours: [
          ['2030-01-01', 957.9],
          ['2030-02-26', 1128.3],
        ],
      },
      1298.7,
      '2030-02-26',
    )
    expect(forecast).toMatchObject({ verdict: 'forecast', likely: '2030-04-23' })
  })

  test('whatever the use; a thousandth more is later by the days that it takes', () => {
    const use = fc.record({
      start: fc.integer({ min: 0, max: 2_000_000 }),
      days: fc.integer({ min: 1, max: 400 }),
      perStep: fc.integer({ min: 1, max: 20_000 }),
      steps: fc.integer({ min: 1, max: 60 }),
      count: fc.constantFrom(2, 4, 5, 8),
      more: fc.constantFrom(0, 1),
    })
    law(300, use, fc.constantFrom(OPTIONS, LINE), ({ start, days, perStep, steps, count, more }, options) => {
      const hours = Array.from(
        { length: count },
        (_, at) => [addDays('2030-01-01', at * days), (start + at * perStep) / 1000] as const,
      )
      const last = addDays('2030-01-01', (count - 1) * days)
      const due = (start + (count - 1 + steps) * perStep + more) / 1000
      const forecast = ask({ hours }, due, last, options)
      expect(forecast).toMatchObject({
        likely: addDays(last, steps * days + more * Math.ceil(days / perStep)),
      })
    })
  })
})

describe('forecastDue', () => {
  test('none under two readings, no band under four', () => {
    expect(ask({ hours: [] }, 100, '2031-01-01')).toEqual({
      verdict: 'cannot tell',
      reasons: [{ code: 'interval/reading-missing', params: { meter: 'hours' } }],
    })
    expect(ask({}, 100, '2031-01-01').verdict).toBe('cannot tell')
    expect(ask({ hours: [['2031-01-01', 10]] }, 100, '2031-01-01')).toEqual({
      verdict: 'cannot tell',
      reasons: [{ code: 'interval/forecast-needs-readings', params: { meter: 'hours', readings: 1 } }],
    })
    // 40 h in 20 days is 2 h a day; 50 h to go take 25 days from 21 January: 15 February.
    const twoRecords = ask(
      {
        hours: [
          ['2031-01-01', 10],
          ['2031-01-21', 50],
        ],
      },
      100,
      '2031-01-25',
    )
    expect(twoRecords).toEqual({
      verdict: 'forecast',
      likely: '2031-02-15',
      method: 'span rate',
      readings: 2,
      perDay: { value: 2, unit: 'h' },
      reasons: [{ code: 'interval/forecast-without-band', params: { readings: 2 } }],
    })
    const threeRecords = ask(
      {
        hours: [
          ['2031-01-01', 10],
          ['2031-01-11', 12],
          ['2031-01-21', 50],
        ],
      },
      100,
      '2031-01-25',
    )
    expect(threeRecords).toMatchObject({ method: 'span rate', likely: '2031-02-15' })
    const fourRecords = ask(
      {
        hours: [
          ['2031-01-01', 10],
          ['2031-01-11', 32],
          ['2031-01-16', 38],
          ['2031-01-21', 50],
        ],
      },
      100,
      '2031-01-25',
    )
    expect(fourRecords).toMatchObject({ method: 'Theil–Sen', readings: 4 })
    expect(fourRecords).toHaveProperty('early')
    expect(fourRecords).toHaveProperty('late')
  })

  test('a meter that stands still never reaches it', () => {
    expect(
      ask(
        {
          hours: [
            ['2031-01-01', 10],
            ['2031-02-01', 10],
          ],
        },
        100,
        '2031-02-01',
      ).verdict,
    ).toBe('cannot tell')
  })

  test('perfectly even use has a band of one day', () => {
    const hours = [0, 7, 14, 28, 35].map((day) => [addDays('2031-01-01', day), 10 + 2 * day] as const)
    for (const options of [OPTIONS, LINE]) {
      // 80 h at day 35; 40 h to go at 2 h a day: day 55, 25 February.
      expect(ask({ hours }, 120, '2031-02-05', options)).toMatchObject({
        early: '2031-02-25',
        likely: '2031-02-25',
        late: '2031-02-25',
        reasons: [],
      })
    }
  })

  test('a pause in the history and one ahead are left out of the days of use', () => {
    const hours = [
      ['2031-01-01', 10],
      ['2031-02-20', 50],
    ] as const
    // 50 days of which 30 in a pause: 2 h a day; 50 h to go take 25 days of use from 20 February: 17 March.
    const pause = { from: '2031-01-11', to: '2031-02-10' }
    expect(ask({ hours, pauses: [pause] }, 100, '2031-02-20')).toMatchObject({ likely: '2031-03-17' })
    // Ten days out of use from 1 March delay it to 27 March.
    const futurePause = { from: '2031-03-01', to: '2031-03-11' }
    expect(ask({ hours, pauses: [futurePause, pause] }, 100, '2031-02-20')).toMatchObject({
      likely: '2031-03-27',
    })
    // Overlapping pauses are counted once; a pause with an invalid date is not counted.
    const overlap = { from: '2031-01-20', to: '2031-02-10' }
    expect(ask({ hours, pauses: [pause, overlap, { from: 'x', to: 'y' }] }, 100, '2031-02-20')).toMatchObject(
      { likely: '2031-03-17' },
    )
  })

  test('a point that is reached says since when', () => {
    expect(
      ask(
        {
          hours: [
            ['2031-01-01', 10],
            ['2031-01-21', 100],
          ],
        },
        100,
        '2031-01-25',
      ),
    ).toEqual({ verdict: 'reached', by: '2031-01-21', reasons: [] })
    expect(
      ask(
        {
          hours: [
            ['2031-01-01', 10],
            ['2031-01-21', 99.999],
          ],
        },
        100,
        '2031-01-25',
      ).verdict,
    ).toBe('forecast')
  })

  test('a swap is followed, an unexplained fall begins anew', () => {
    const swap = {
      kind: 'meter swap',
      date: '2031-01-11',
      meter: 'hours',
      oldReading: 30,
      newReading: 0,
    } as const
    const hours = [
      ['2031-01-01', 10],
      ['2031-01-21', 20],
    ] as const
    // 20 h on the old meter and 20 h on the new one in 20 days; 30 h to go at 2 h a day: 5 February.
    expect(ask({ hours, events: [swap] }, 50, '2031-01-21')).toMatchObject({
      likely: '2031-02-05',
      readings: 2,
    })
    expect(
      ask(
        {
          hours: [
            ['2031-01-01', 110],
            ['2031-01-21', 20],
          ],
        },
        50,
        '2031-01-21',
      ).verdict,
    ).toBe('cannot tell')
  })

  test('a line below the last reading is reported', () => {
    const hours = [
      ['2031-01-01', 0],
      ['2031-01-11', 40],
      ['2031-01-21', 80],
      ['2031-01-31', 100],
      ['2031-02-10', 102],
    ] as const
    const forecast = ask({ hours }, 103, '2031-02-10', LINE)
    expect(forecast).toMatchObject({ verdict: 'forecast', early: '2031-02-10' })
    expect(forecast.reasons.map(({ code }) => code)).toEqual(['interval/forecast-contradicted'])
  })

  test('use too uneven for a latest day, and a point beyond the calendar', () => {
    const hours = [
      ['2031-01-01', 0],
      ['2031-01-02', 20],
      ['2031-03-01', 20],
      ['2031-05-01', 21],
    ] as const
    const forecast = ask({ hours }, 1000, '2031-05-01')
    expect(forecast).not.toHaveProperty('late')
    expect(forecast.reasons.map(({ code }) => code)).toEqual(['interval/forecast-without-end'])
    const farForecast = ask(
      {
        hours: [
          ['2031-01-01', 0],
          ['2032-01-01', 0.001],
        ],
      },
      1_000_000,
      '2032-01-01',
    )
    expect(farForecast).toEqual({
      verdict: 'cannot tell',
      reasons: [{ code: 'interval/forecast-beyond-calendar', params: { meter: 'hours' } }],
    })
  })

  test('early, likely and late are in order, from the last reading on', () => {
    const gaps = fc.array(fc.tuple(fc.integer({ min: 1, max: 60 }), fc.integer({ min: 0, max: 400 })), {
      minLength: 1,
      maxLength: 20,
    })
    law(
      50,
      gaps,
      fc.integer({ min: 1, max: 3000 }),
      fc.constantFrom(OPTIONS, LINE),
      (list, left, options) => {
        let day = 0
        let tenths = 0
        const hours: (readonly [string, number])[] = [['2031-01-01', 0]]
        for (const [days, used] of list) {
          day += days
          tenths += Math.min(used, days * 240)
          hours.push([addDays('2031-01-01', day), tenths / 10])
        }
        const today = addDays('2031-01-01', day)
        const forecast = ask({ hours }, (tenths + left) / 10, today, options)
        if (forecast.verdict !== 'forecast') return
        const { early = forecast.likely, likely, late = likely } = forecast
        expect(today <= early && early <= likely && likely <= late).toBe(true)
      },
    )
  })

  test('misuse throws', () => {
    const hours = [['2031-01-01', 10]] as const
    expect(() => ask({ hours }, 100, '2031-13-01')).toThrow(RangeError)
    expect(() => ask({ hours }, Number.NaN, '2031-01-01')).toThrow(
      'facts.dueAt.value must be a meter value, got NaN',
    )
    expect(() => ask({ hours }, 100, '2031-01-01', { ...OPTIONS, confidence: 1 })).toThrow(
      'confidence must be a number above 0 and below 1, got 1',
    )
    expect(() => ask({ hours }, 100, '2031-01-01', { confidence: 0.8 } as ForecastOptions)).toThrow(
      "options.scatter must be 'about a steady line' or 'from day to day', got undefined",
    )
    expect(() => forecastDue({ log: log({}), meter: 'hours' } as unknown as ForecastFacts, OPTIONS)).toThrow(
      TypeError,
    )
    const validQuestion = {
      log: log({ hours }),
      meter: 'hours',
      dueAt: { value: 100, unit: 'h' },
      today: '2031-01-01',
    }
    const expectRefused = (change: object, message: string, options: object = {}) =>
      expect(() =>
        forecastDue(
          { ...validQuestion, ...change } as ForecastFacts,
          { ...OPTIONS, ...options } as ForecastOptions,
        ),
      ).toThrow(message)
    for (const none of [undefined, null]) {
      expect(() => forecastDue(none as unknown as ForecastFacts, OPTIONS)).toThrow(
        /^facts must be an object, got .*$/,
      )
      expect(() => forecastDue(validQuestion as ForecastFacts, none as unknown as ForecastOptions)).toThrow(
        /^options must be an object, got .*$/,
      )
    }
    for (const [value, shownValue] of ANYTHING) {
      expectRefused({ meter: value }, `facts.meter must be 'hours' or 'distance', got ${shownValue}`)
      expectRefused(
        { dueAt: { value, unit: 'h' } },
        `facts.dueAt.value must be a meter value, got ${shownValue}`,
      )
      expectRefused({ dueAt: { value: 5, unit: value } }, `facts.dueAt.unit must be h, got ${shownValue}`)
      expectRefused({}, `options.confidence must be a number above 0 and below 1, got ${shownValue}`, {
        confidence: value,
      })
      expectRefused(
        {},
        `options.scatter must be 'about a steady line' or 'from day to day', got ${shownValue}`,
        {
          scatter: value,
        },
      )
    }
    expectRefused({ log: undefined }, 'facts.log must be an object, got undefined')
    expectRefused({ log: {} }, 'facts.log.meters must be an object, got undefined')
    // A due point of an hour meter cannot be in kilometres.
    expectRefused({ dueAt: { value: 5, unit: 'km' } }, "facts.dueAt.unit must be h, got 'km'")
    expectRefused(
      { meter: 'distance', dueAt: { value: 5, unit: 'h' } },
      "facts.dueAt.unit must be km or mi, got 'h'",
    )
  })
})

describe('back-test with known truth (the table of docs/intervals.md)', () => {
  const HISTORIES = 3000

  test('use from day to day: the 80 % band covers 80 ± 3 %, at any number of readings', () => {
    for (const counts of [[4], [6], [12], [24], [48]]) {
      const { covered } = backTest('use from day to day', 'from day to day', HISTORIES, counts)
      expect(Math.abs(covered - 0.8), `${counts} readings: ${covered}`).toBeLessThanOrEqual(0.03)
    }
  })

  test('a steady line with stray readings: 80 ± 3 % from twelve readings, and wider, never narrower, below', () => {
    for (const counts of [[12], [24], [48]]) {
      const { covered } = backTest('steady line, stray readings', 'about a steady line', HISTORIES, counts)
      expect(Math.abs(covered - 0.8), `${counts} readings: ${covered}`).toBeLessThanOrEqual(0.03)
    }
    for (const counts of [[4], [6], [8]]) {
      expect(
        backTest('steady line, stray readings', 'about a steady line', HISTORIES, counts).covered,
      ).toBeGreaterThan(0.8)
    }
  })

  test('prints the misses for the wrong noise model, and for histories that fit no model', () => {
    const rows = Object.keys(GENERATORS).flatMap((generator) =>
      (['from day to day', 'about a steady line'] as const).map((scatter) =>
        backTest(generator, scatter, 1500, [6, 12, 24]),
      ),
    )
    for (const { generator, scatter, covered, medianError } of rows) {
      console.log(`${generator} | ${scatter} | ${(covered * 100).toFixed(1)} % | ${medianError} days`)
    }
    // For use that varies by the day, the band for a steady line is far too narrow, and the table must show this.
    const wrongRow = rows.find(
      (row) => row.generator === 'use from day to day' && row.scatter === 'about a steady line',
    )
    expect(wrongRow?.covered).toBeLessThan(0.6)
    const pause = rows.find(
      (row) => row.generator === 'a pause that nobody logged' && row.scatter === 'from day to day',
    )
    expect(pause?.covered).toBeLessThan(0.77)
  })
})
