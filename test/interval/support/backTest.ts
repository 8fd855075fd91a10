import { daysBetween } from '../../../src/calendar/dayNumbers.js'
import { type ForecastOptions, forecastDue } from '../../../src/v1/interval/meters.js'
import type { MachineLog } from '../../../src/v1/spec.js'
import { addDays } from '../../support/addDays.js'
import { log } from './machine.js'
import { seedRandom } from './randomRows.js'

/** A history up to today, and the day on which the due point is really reached. */
interface History {
  readonly machine: MachineLog
  readonly today: string
  readonly dueAt: number
  readonly trueDay: string
}

const START = '2025-01-01'
type Random = () => number

function normal(random: Random): number {
  return Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random())
}

const tenth = (hours: number): number => Math.round(hours * 10) / 10

/** Steady use; each reading differs from the line independently (by up to a week of use, as if written down late). */
function steadyLine(random: Random, count: number): History {
  for (;;) {
    const rate = 0.5 + 3 * random()
    const readings: (readonly [string, number])[] = []
    let day = 0
    let canFall = false
    for (let index = 0; index < count; index++) {
      day += 30 + Math.floor(31 * random())
      const value = tenth(100 + rate * (day + 7 * normal(random)))
      canFall ||= value < (readings[readings.length - 1]?.[1] ?? 0)
      readings.push([addDays(START, day), value])
    }
    if (canFall) continue
    const futureDays = day * (0.5 + random())
    return {
      machine: log({ hours: readings }),
      today: addDays(START, day),
      dueAt: tenth(100 + rate * (day + futureDays)),
      trueDay: addDays(START, Math.ceil(day + futureDays)),
    }
  }
}

type Daily = (day: number, random: Random) => number

/** Each day's use is random: on three days in ten the machine is not used, on the others use varies. */
const dayToDay: Daily = (_, random) => (random() < 0.3 ? 0 : -2 * Math.log(1 - random()))
/** Not used for ninety days near the middle of the history, without a pause in the log. */
const withPause =
  (from: number): Daily =>
  (day, random) =>
    day >= from && day < from + 90 ? 0 : dayToDay(day, random)
/** Three times the use in every second quarter. */
const withBursts: Daily = (day, random) => dayToDay(day, random) * (Math.floor(day / 91) % 2 === 0 ? 1 : 3)

/** A machine with daily use, read every one to three weeks; after a swap the meter counts `fast` times as fast. */
function dailyUse(random: Random, count: number, use: Daily, swapFast?: number): History {
  const readings: (readonly [string, number])[] = []
  const events: NonNullable<MachineLog['events']>[number][] = []
  const rate = 0.25 + random()
  let day = 0
  let total = 0
  let shownHours = 0
  let speedFactor = 1
  const useDays = (days: number): void => {
    for (const end = day + days; day < end; day++) {
      const used = rate * use(day, random)
      total += used * speedFactor
      shownHours += used * speedFactor
    }
  }
  for (let index = 0; index < count; index++) {
    useDays(7 + Math.floor(15 * random()))
    readings.push([addDays(START, day), tenth(shownHours)])
    if (swapFast !== undefined && index === Math.floor(count / 2)) {
      events.push({
        kind: 'meter swap',
        date: addDays(START, day + 1),
        meter: 'hours',
        oldReading: tenth(shownHours),
        newReading: 0,
      })
      speedFactor = swapFast
      shownHours = 0
      useDays(2)
    }
  }
  const today = addDays(START, day)
  const history = total
  const dueAt = tenth(shownHours + (history / day) * (30 + day * random()))
  const machine = log({ hours: readings, ...(events.length > 0 ? { events } : {}) })
  while (shownHours < dueAt) useDays(1)
  return { machine, today, dueAt, trueDay: addDays(START, day) }
}

export const GENERATORS: Readonly<Record<string, (random: Random, count: number) => History>> = {
  'steady line, stray readings': steadyLine,
  'use from day to day': (random, count) => dailyUse(random, count, dayToDay),
  'a pause that nobody logged': (random, count) => dailyUse(random, count, withPause(Math.floor(count * 7))),
  'bursts, every second quarter': (random, count) => dailyUse(random, count, withBursts),
  'a swap to a meter 15 % fast': (random, count) => dailyUse(random, count, dayToDay, 1.15),
}

export interface BackTestRow {
  readonly generator: string
  readonly scatter: ForecastOptions['scatter']
  readonly histories: number
  /** Share of histories whose true day is between early and late. */
  readonly covered: number
  /** Median error of the likely day, in days; above 0: too late. */
  readonly medianError: number
}

/** Forecasts this number of seeded histories and counts how often the true day is in the band. */
export function backTest(
  generator: string,
  scatter: ForecastOptions['scatter'],
  histories: number,
  counts: readonly number[],
): BackTestRow {
  const make = GENERATORS[generator]
  if (make === undefined) throw new RangeError(`generator is ${generator}`)
  const random = seedRandom(1968)
  let covered = 0
  const errors: number[] = []
  for (let index = 0; index < histories; index++) {
    const { machine, today, dueAt, trueDay } = make(random, counts[index % counts.length] ?? 6)
    const forecast = forecastDue(
      { log: machine, meter: 'hours', dueAt: { value: dueAt, unit: 'h' }, today },
      { confidence: 0.8, scatter },
    )
    if (forecast.verdict !== 'forecast') continue
    errors.push(daysBetween(trueDay, forecast.likely))
    const notBefore = forecast.early === undefined || forecast.early <= trueDay
    const notAfter = forecast.late === undefined || forecast.late >= trueDay
    if (notBefore && notAfter) covered += 1
  }
  errors.sort((error, other) => error - other)
  return {
    generator,
    scatter,
    histories,
    covered: covered / histories,
    medianError: errors[errors.length >> 1] ?? Number.NaN,
  }
}
