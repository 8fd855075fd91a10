import { describe, expect, test } from 'vitest'
import { calendarTexts } from '../../src/message/en/calendar.js'
import { en } from '../../src/message/en/index.js'
import { intervalTexts } from '../../src/message/en/interval.js'
import { forecastDue, importReadings, readMeters } from '../../src/v1/interval/meters.js'
import { computeDue } from '../../src/v1/interval.js'
import { renderMessage } from '../../src/v1/message.js'
import { log, OPTIONS, question, stated } from './support/machine.js'

const normalizeSpaces = (text: string) => text.replaceAll(/[\u00a0\u202f]/g, ' ')
const say = (reasons: readonly { readonly code: string; readonly params: object }[]) =>
  reasons.map((reason) => normalizeSpaces(renderMessage(reason as Parameters<typeof renderMessage>[0], en)))

describe('English sentences', () => {
  test('a verdict by hours and calendar', () => {
    const machine = log({ hours: [['2031-03-02', 519.4]], records: [{ date: '2031-01-12', hours: 412 }] })
    const intervals = { repeat: stated({ hours: '100', period: 'P1Y6M' }), window: stated({ hours: '10' }) }
    expect(say(computeDue(question(intervals, machine, '2031-03-03'), OPTIONS).reasons)).toEqual([
      'due: 100 h since the last service on 2031-01-12 at 412 h, due at 512 h; 519.4 h on 2031-03-02, 7.4 h over.',
      'The service window ends at 522 h; after that it is overdue.',
      'not due: 1 year and 6 months since the last service on 2031-01-12, due on 2032-07-12; 497 days left.',
      'Governing limit: hours, about 2031-02-27 (its date comes first).',
    ])
  })

  test('a display that was changed: to a smaller figure, and to a larger one', () => {
    const swapText = (newReading: number, shownReading: number) =>
      say(
        computeDue(
          question(
            { repeat: stated({ hours: '100' }) },
            log({
              hours: [['2031-03-01', shownReading]],
              records: [{ date: '2031-01-01', hours: 780 }],
              events: [
                { kind: 'meter swap', date: '2031-02-01', meter: 'hours', oldReading: 812, newReading },
              ],
            }),
            '2031-03-01',
          ),
          OPTIONS,
        ).reasons,
      )[0]
    expect(swapText(5, 45)).toBe(
      'Since counting began, the hour meter was swapped, was reset or rolled over: it shows 807 h less than it would otherwise.',
    )
    expect(swapText(1000, 1010)).toMatch(/it shows 188 h more than it would otherwise\.$/)
  })

  test('the manual’s printed digits are kept', () => {
    const machine = log({ commissioned: '2031-01-01', hours: [['2031-03-02', 10]] })
    const [text] = say(
      computeDue(question({ repeat: stated({ hours: '250.0' }) }, machine, '2031-03-03'), OPTIONS).reasons,
    )
    expect(text).toBe(
      'not due: 250.0 h since first use on 2031-01-01 at 0 h, due at 250 h; 10 h on 2031-03-02, 240 h left.',
    )
  })

  test('the text about missing facts says what to do', () => {
    const machine = log({ hours: [], km: [['2031-01-01', 5]], records: [{ date: '2031-01-02' }] })
    const intervals = { repeat: stated({ hours: '100', distance: { value: '500', unit: 'km' } }) }
    expect(say(computeDue(question(intervals, machine, '2031-01-03'), OPTIONS).missing)).toEqual([
      'No reading of the hour meter. Read the meter and enter it.',
      'No reading of the odometer at the last service on 2031-01-02. Enter the reading for that day.',
    ])
  })

  test('findings, forecasts and imports', () => {
    const fall = log({
      hours: [
        ['2030-05-01', 800],
        ['2030-09-01', 30],
      ],
    })
    expect(say(readMeters(fall).findings)).toEqual([
      'The meter falls from 800 h on 2030-05-01 to 30 h on 2030-09-01, without a swap, reset or rollover.',
    ])
    const forecast = forecastDue(
      {
        log: log({ hours: [['2031-01-01', 1]] }),
        meter: 'hours',
        dueAt: { value: 9, unit: 'h' },
        today: '2031-01-02',
      },
      { confidence: 0.8, scatter: 'from day to day' },
    )
    expect(say(forecast.reasons)).toEqual([
      'Use per day not known: 1 reading of the hour meter. Enter readings from at least two days.',
    ])
    expect(say(importReadings({}, { edition: '2020' }).findings)).toEqual([
      'No equipment found. Expected the JSON of a fleet, a list of equipment, or one machine.',
    ])
  })

  const quantity = { value: 5, unit: 'h' }
  const ANY = {
    by: 'hours',
    verdict: 'due',
    since: 'rebuild',
    of: 'rebuild',
    meter: 'hours',
    printed: quantity,
    limit: { period: 'P6M' },
    from: { date: '2031-01-01', meter: quantity },
    duePoint: { date: '2031-01-02', meter: quantity },
    now: { date: '2031-01-03', meter: quantity },
    left: quantity,
    before: quantity,
    after: quantity,
    largest: quantity,
    less: quantity,
    point: quantity,
    until: '2031-01-04',
    text: 'x',
    event: 'submersion',
    date: '2031-01-05',
    to: '2031-01-06',
    decidedBy: 'days',
    dueOn: '2031-01-07',
    criteria: 'wading',
    factor: '0.5',
    service: 'check',
    instance: 'left',
    what: 'the record',
    days: 3,
    staleAfter: 2,
    which: 'repeat',
    facts: ['variant'],
    period: 'P6M',
    value: 4,
    readings: 2,
    one: 'Hour',
    other: 'hour',
    unit: 'league',
    units: ['km', 'mi'],
    speed: 3,
    slowest: 1,
    fastest: 80,
    months: 6,
  }
  /** Params of these codes have another type than params of the same name elsewhere. */
  const OWN: Readonly<Record<string, object>> = {
    'interval/meter-falls': { from: '2031-01-01' },
    'interval/meter-jumps': { from: '2031-01-01' },
    'interval/meter-broken': { from: '2031-01-01' },
    'interval/due-date-out-of-calendar': { from: '2031-01-01' },
    'interval/log-speed': { from: '2031-01-01' },
    'interval/rollover-assumed': { limit: quantity },
    'interval/readings-out-of-order': { after: '2031-01-01' },
    'interval/first-longer-than-repeat': { by: ['hours', 'period'] },
  }
  test.each([...Object.keys(intervalTexts), ...Object.keys(calendarTexts)])(
    '%s is a whole sentence',
    (code) => {
      const [text = ''] = say([{ code, params: { ...ANY, ...OWN[code] } }])
      expect(text).toMatch(/[.]$/)
      expect(text).not.toMatch(/undefined|NaN|\[object|\{|–/)
      expect(text).not.toContain('interval/')
    },
  )
})
