import { compareDates } from '../../../src/calendar/dayNumbers.js'
import { addPeriod } from '../../../src/v1/calendar.js'
import type { DueRow } from '../../../src/v1/interval/fleet.js'
import type { IntervalFacts } from '../../../src/v1/interval.js'
import { addDays } from '../../support/addDays.js'
import { log, question, stated } from './machine.js'

export const TODAY = '2031-10-06'

/** A seeded generator (mulberry32), so that every run draws the same rows. */
export function seedRandom(seed: number): () => number {
  let state = seed
  return () => {
    state = (state + 0x6d2b79f5) | 0
    let mixedBits = Math.imul(state ^ (state >>> 15), 1 | state)
    mixedBits = (mixedBits + Math.imul(mixedBits ^ (mixedBits >>> 7), 61 | mixedBits)) ^ mixedBits
    return ((mixedBits ^ (mixedBits >>> 14)) >>> 0) / 4_294_967_296
  }
}

/**
 * Rows near the boundaries: month ends; whole, odd and half thousandths; use that reaches a limit exactly or misses it
 * by one count; meters that are missing, unread, stale, or that fall or jump; events before and after the last service.
 */
export function randomRow(random: () => number, index: number): DueRow {
  const pickOne = <T>(...choices: readonly T[]): T => choices[Math.floor(random() * choices.length)] as T
  const wholeNumber = (below: number): number => Math.floor(random() * below)
  const monthEnd = (): string =>
    addDays(addPeriod('2029-01-01', 'P1M', 1 + wholeNumber(33)), -1 - pickOne(0, 0, 0, 1, 2))
  const lastDate = random() < 0.5 ? monthEnd() : addDays('2029-01-01', wholeNumber(1008))
  const hoursDate = random() < 0.7 ? addDays(TODAY, -wholeNumber(40)) : lastDate
  const readOn = compareDates(hoursDate, lastDate) < 0 ? lastDate : hoursDate
  const row: { -readonly [Key in keyof DueRow]: DueRow[Key] } = { id: `m-${index}`, lastDate }
  if (random() < 0.8) {
    const every = pickOne(50, 100, 250, 250.5, 499.999, 1000)
    const base = wholeNumber(9_000_000) / pickOne(1, 10, 100, 1000, 10_000)
    row.everyHours = every
    row.lastHours = base
    row.hoursDate = readOn
    const used = pickOne(
      0,
      every,
      every * random() * 2,
      every * 0.9,
      every + 10,
      every - 0.001,
      every + 0.001,
      every + 10.001,
    )
    const countStep = pickOne(1000, 1000, 10_000)
    row.hours = Math.round((base + used) * countStep) / countStep
    if (random() < 0.5) row.windowHours = 10
    if (random() < 0.03) row.noHourMeter = true
    if (random() < 0.03 && readOn !== lastDate) row.hours = base - 1 >= 0 ? base - 1 : null
    if (random() < 0.02) row.hours = null
    if (random() < 0.03 && readOn !== lastDate) row.lastHours = null
  }
  if (random() < 0.7) {
    const unit = pickOne('km', 'mi')
    const every = pickOne(500, 1000, 5000, 3000, 1609.344)
    const everyUnit = pickOne('km', 'mi')
    const inMeterUnit = everyUnit === unit ? every : unit === 'km' ? every * 1.609344 : every / 1.609344
    const base = wholeNumber(2_000_000) / pickOne(1, 10, 1000)
    row.everyDistance = every
    row.everyDistanceUnit = everyUnit
    row.distanceUnit = unit
    row.lastDistance = base
    row.distanceDate = readOn
    row.distance =
      base +
      pickOne(
        0,
        inMeterUnit,
        inMeterUnit * random() * 2,
        inMeterUnit - 0.001,
        inMeterUnit + 0.001,
        inMeterUnit * 1.05,
      )
    if (random() < 0.5) row.windowDistance = every / 20
    if (random() < 0.03) row.noOdometer = true
  }
  if (random() < 0.8) {
    if (random() < 0.9) row.everyMonths = pickOne(1, 2, 3, 6, 11, 12, 24, 36, 13)
    if (random() < 0.2 || row.everyMonths === undefined) row.everyDays = pickOne(7, 14, 30, 90, 400, 1)
    if (random() < 0.4) row.windowMonths = pickOne(0, 1)
    if (random() < 0.4) row.windowDays = pickOne(0, 7, 14, 31)
  }
  if (random() < 0.05) row.eventDate = addDays(TODAY, pickOne(-400, -30, -1, 0, 1))
  return row
}

/**
 * The same machine as a log with its last service and one later reading, and the same interval as a sheet states it.
 */
export function questionOf(row: DueRow): IntervalFacts {
  const unit = row.distanceUnit ?? 'km'
  const machine = log({
    records: [
      { date: row.lastDate ?? '', ...(typeof row.lastHours === 'number' ? { hours: row.lastHours } : {}) },
    ],
    ...(row.eventDate ? { events: [{ kind: 'submersion', date: row.eventDate }] } : {}),
  })
  const [lastRecord] = machine.records
  const figure = (value: number): string => String(value)
  const period = `P${row.everyMonths ? `${row.everyMonths}M` : ''}${row.everyDays ? `${row.everyDays}D` : ''}`
  const window = `P${row.windowMonths ?? 0}M${row.windowDays ?? 0}D`
  return {
    ...question(
      {
        repeat: stated({
          ...(typeof row.everyHours === 'number' ? { hours: figure(row.everyHours) } : {}),
          ...(typeof row.everyDistance === 'number'
            ? { distance: { value: figure(row.everyDistance), unit: row.everyDistanceUnit ?? 'km' } }
            : {}),
          ...(period === 'P' ? {} : { period }),
        }),
        window: stated({
          hours: figure(row.windowHours ?? 0),
          distance: { value: figure(row.windowDistance ?? 0), unit: row.everyDistanceUnit ?? 'km' },
          period: window,
        }),
      },
      {
        ...machine,
        records:
          lastRecord === undefined
            ? []
            : [
                {
                  ...lastRecord,
                  readings: {
                    ...lastRecord.readings,
                    ...(typeof row.lastDistance === 'number'
                      ? { distance: { value: row.lastDistance, unit } }
                      : {}),
                  },
                },
              ],
        meters: {
          ...(row.noHourMeter
            ? {}
            : {
                hours: {
                  unit: 'h',
                  readings:
                    typeof row.hours === 'number' ? [{ date: row.hoursDate ?? '', value: row.hours }] : [],
                },
              }),
          ...(row.noOdometer
            ? {}
            : {
                distance: {
                  unit,
                  readings:
                    typeof row.distance === 'number'
                      ? [{ date: row.distanceDate ?? '', value: row.distance }]
                      : [],
                },
              }),
        },
      },
      TODAY,
    ),
    events: ['submersion'],
  }
}
