import { refuse, requireKnownKeys, requireShape, type Shape } from '../base/index.js'
import { type DateText, dayNumberOf } from '../calendar/index.js'
import type { DistanceUnit, Quantity } from '../quantity/index.js'
import type { Interval, MachineLog, Resolved, SevereUse } from '../spec/index.js'
import { computeDue } from './computeDue.js'
import type { DueVerdict } from './dueVerdict.js'
import type { DueIntervals, DueOptions } from './intervalFacts.js'

/** The readings of the meters on one day; absent if the machine has no such meter. */
export interface MetersOnDay {
  readonly date: DateText
  readonly hours?: number
  readonly distance?: Quantity<DistanceUnit>
}

/** An interval as the manual states it, and the meters at the last service and now. */
export interface IntervalReadings {
  readonly every: Interval
  /** Until the first service, in place of `every`. */
  readonly first?: Interval
  /** The permitted delay before a service is overdue. */
  readonly window?: Interval
  /** If present, the use is severe and this applies. */
  readonly severe?: SevereUse
  /** Absent if never serviced: the count then starts at first use. */
  readonly last?: MetersOnDay
  /** The day of first use; needed for a period if the machine was never serviced. */
  readonly firstUse?: DateText
  readonly now: MetersOnDay
}

const READING_KEYS = ['every', 'first', 'window', 'severe', 'last', 'firstUse', 'now']
const READINGS_SHAPE: Shape = { every: {}, now: {}, 'first?': {}, 'window?': {}, 'severe?': {}, 'last?': {} }
const DAY_KEYS = ['date', 'hours', 'distance']

/**
 * Decides whether a service is due, from the manual's interval and the meters on two days, without a sheet or a log.
 * With a log, which also has meter swaps, pauses and schedules, use {@link computeDue}.
 *
 * The same calculation as that of {@link computeDue}: due if last + interval ≤ now, by whichever limit comes
 * first. A limit whose meter has no reading on either day is left out, with a reason; if only one of the days
 * has a reading, the answer is `cannot tell`.
 *
 * @param readings - `every`, and `first`, `window` and `severe` if they apply, as in a sheet; the meters at the `last` service,
 *   or `firstUse` if there was none; the meters `now`. Hours 0 to 1e9, distances 0 to 9e6 km, not rounded
 * @param options - `soon`: when a service is due soon; `{}`: never
 * @returns the verdict, one line for each limit, the limit that comes first, all reasons, and the missing
 *   facts
 * @throws TypeError, RangeError if a part has the wrong shape, a figure cannot be read, a date is invalid, or
 *   `last` is after `now`
 *
 * Source: house rule, as for {@link computeDue}.
 *
 * @example
 * ```ts
 * // Every 250 h or 12 months, last done at 301.4 h; the meter shows 512.6 h today. Is it due?
 * import { judgeInterval } from 'drivetrain-service/v1/interval'
 * const verdict = judgeInterval(
 *   {
 *     every: { kind: 'interval', hours: '250', period: 'P12M' },
 *     last: { date: '2022-11-20', hours: 301.4 },
 *     now: { date: '2023-10-06', hours: 512.6 },
 *   },
 *   { soon: { hours: 10 } },
 * )
 * verdict.verdict // => 'not due'
 * verdict.lines[0]?.duePoint // => { meter: { value: 551.4, unit: 'h' } }
 * ```
 */
export function judgeInterval(readings: IntervalReadings, options: Pick<DueOptions, 'soon'>): DueVerdict {
  requireKnownKeys('readings', readings, READING_KEYS)
  requireShape('readings', readings, READINGS_SHAPE)
  requireKnownKeys('options', options, ['soon'])
  const { last, firstUse, now, severe } = readings
  requireKnownKeys('readings.now', now, DAY_KEYS)
  const today = requireDay('now.date', now.date)
  if (firstUse !== undefined) requireDay('firstUse', firstUse)
  if (last !== undefined) {
    requireKnownKeys('readings.last', last, DAY_KEYS)
    if (requireDay('last.date', last.date) > today)
      throw refuse('readings.last.date', last.date, `a day up to ${now.date}`)
  }
  return computeDue(
    {
      intervals: resolveIntervals(readings),
      log: makeLog(readings),
      service: SERVICE_ID,
      gearcase: GEARCASE_ID,
      today: now.date,
    },
    // The only current reading is today's.
    { soon: options.soon, staleAfter: { days: 0 }, severity: severe === undefined ? 'normal' : 'severe' },
  )
}

const SERVICE_ID = 'service'
const GEARCASE_ID = 'gearcase'

function requireDay(name: string, date: DateText): number {
  const day = dayNumberOf(date)
  if (Number.isNaN(day)) throw refuse(`readings.${name}`, date, 'a date YYYY-MM-DD', 'string')
  return day
}

function resolveIntervals({ every, first, window, severe }: IntervalReadings): DueIntervals {
  return {
    repeat: resolveInterval(every),
    countFrom: 'completion',
    ...(first && { first: resolveInterval(first) }),
    ...(window && { window: resolveInterval(window) }),
    ...(severe && {
      severe: severe.kind === 'factor' ? severe : { ...severe, interval: resolveInterval(severe.interval) },
    }),
  }
}

function resolveInterval(interval: Interval): Resolved<Interval> {
  const trace = { path: '', reasons: [] }
  return interval.kind === 'not stated'
    ? { kind: 'not stated', trace }
    : { kind: 'stated', value: interval, trace }
}

/** A log with only these readings. */
function makeLog({ last, firstUse, now }: IntervalReadings): MachineLog {
  const sheet = { id: 'sheet', revision: '1' }
  const commonFields = { version: '1.0', sheet } as const
  const distance = now.distance ?? last?.distance
  const makeRecord = (day: MetersOnDay): MachineLog['records'][number] => {
    const { date, hours, distance } = day
    return {
      ...commonFields,
      kind: 'service-record',
      id: 'last',
      machine: 'machine',
      detail: 'date and meters only',
      date,
      readings: {
        ...(hours !== undefined && { hours: { value: hours, unit: 'h' } }),
        ...(distance && { distance }),
      },
      entries: [{ service: SERVICE_ID, gearcase: GEARCASE_ID, opened: [], tightened: [], seals: [] }],
    }
  }
  const hours = now.hours ?? last?.hours
  const { date } = now
  return {
    ...commonFields,
    kind: 'machine-log',
    id: 'machine',
    name: 'machine',
    identity: {},
    ...(firstUse !== undefined && { commissioned: firstUse }),
    meters: {
      ...(hours !== undefined && {
        hours: { unit: 'h', readings: now.hours === undefined ? [] : [{ date, value: now.hours }] },
      }),
      ...(distance && {
        distance: {
          unit: distance.unit,
          readings: now.distance === undefined ? [] : [{ date, value: now.distance.value }],
        },
      }),
    },
    records: last === undefined ? [] : [makeRecord(last)],
  }
}
