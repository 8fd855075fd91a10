import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { checkDocuments } from '../../src/v1/rules.js'
import { setOf } from './support/goodSets.js'

const sheet = JSON.parse(readFileSync('schemas/v1/vectors/bases/tind-4/sheet.json', 'utf8'))
const log = JSON.parse(readFileSync('schemas/v1/vectors/bases/tind-4/log.json', 'utf8'))

/** The interval findings of the example sheet with the oil change's intervals changed. */
function codes(change: object): readonly string[] {
  const changed = structuredClone(sheet)
  const intervals = changed.services['gear-oil-change'].intervals
  for (const [key, value] of Object.entries(change)) {
    if (value === undefined) delete intervals[key]
    else intervals[key] = value
  }
  return checkDocuments(setOf([{ name: 'sheet.json', document: changed }]))
    .map(({ code }) => code)
    .filter((code) => code.startsWith('interval/'))
}
const repeat = (parts: object) =>
  codes({ repeat: { kind: 'interval', ...parts }, first: undefined, severe: undefined, window: undefined })

describe('limits of the interval rules, at, just below and just above', () => {
  test('first against repeat', () => {
    const first = (hours: string) =>
      codes({
        first: { kind: 'interval', hours },
        repeat: { kind: 'interval', hours: '200' },
        severe: undefined,
        window: undefined,
      })
    expect([first('199.999'), first('200'), first('200.001')]).toEqual([
      [],
      [],
      ['interval/first-longer-than-repeat'],
    ])
  })

  test('severe against repeat, and the factor', () => {
    const severeHours = (hours: string) =>
      codes({
        severe: { kind: 'interval', interval: { kind: 'interval', hours }, criteria: 'mud' },
        first: undefined,
        window: undefined,
      })
    expect([severeHours('200'), severeHours('200.001')]).toEqual([[], ['interval/severe-longer-than-repeat']])
    const factor = (value: string) => codes({ severe: { kind: 'factor', factor: value, criteria: 'mud' } })
    expect([factor('1'), factor('2'), factor('0.5'), factor('0.25'), factor('0.75')]).toEqual([
      [],
      ['interval/severe-longer-than-repeat'],
      [],
      [],
      [],
    ])
    expect(factor('0.3')).toEqual(['interval/fractional-period'])
  })

  test('window against repeat', () => {
    const window = (hours: string) => codes({ window: { kind: 'interval', hours } })
    expect([window('0'), window('199.999'), window('200')]).toEqual([
      [],
      [],
      ['interval/window-not-below-repeat'],
    ])
  })

  test('implied speed, 1 and 80 km/h', () => {
    const speed = (km: string) => repeat({ hours: '200', distance: { value: km, unit: 'km' } })
    const expectedCodes = ['interval/implied-speed']
    expect([speed('199.999'), speed('200'), speed('16000'), speed('16000.001')]).toEqual([
      expectedCodes,
      [],
      [],
      expectedCodes,
    ])
  })

  test('months that went through days', () => {
    const days = (count: number) => repeat({ hours: '200', period: `P${count}D` })
    // 365.25 × 3/12 = 91.3, 365 × 6/12 = 182.5, 365.25 × 2 = 730.5; rounded down or up.
    for (const count of [91, 92, 121, 122, 182, 183, 273, 274, 365, 366, 730, 731, 1095, 1096]) {
      expect(days(count), String(count)).toEqual(['interval/months-as-days'])
    }
    for (const count of [1, 7, 14, 30, 60, 90, 93, 100, 180, 184, 360, 364, 367, 400])
      expect(days(count), String(count)).toEqual([])
    expect(repeat({ hours: '200', period: 'P1W' })).toEqual([])
  })

  test('speed between two days of a log, 130 km/h over at least five hours', () => {
    const speed = (hours: number, distance: number, unit = 'km') => {
      const readings = (start: number, value: number) => [
        { date: '2023-01-01', value: start },
        { date: '2023-01-03', value },
      ]
      const changed = {
        ...log,
        records: [],
        events: [],
        meters: {
          hours: { unit: 'h', readings: readings(100, 100 + hours) },
          distance: { unit, readings: readings(1000, 1000 + distance) },
        },
      }
      return checkDocuments(
        setOf([
          { name: 'sheet.json', document: sheet },
          { name: 'log.json', document: changed },
        ]),
      )
        .map(({ code }) => code)
        .filter((code) => code.startsWith('interval/'))
    }
    const expectedCodes = ['interval/log-speed']
    expect([speed(10, 1300), speed(10, 1300.01), speed(4.9, 1300), speed(5, 651)]).toEqual([
      [],
      expectedCodes,
      [],
      expectedCodes,
    ])
    // 81 mi are 130.36 km.
    expect([speed(10, 800, 'mi'), speed(10, 810, 'mi')]).toEqual([[], expectedCodes])
  })
})
