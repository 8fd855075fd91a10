import { dateOfDay } from '../calendar/dateOfDay.js'
import { dayNumberOf } from '../calendar/dayNumberOf.js'
import type { Finding, Severity } from '../finding.js'
import type { MachineLog, MeterName } from '../spec/machineLog.js'
import type { IntervalCodes } from './codes.js'
import { COUNTS_PER_UNIT, LARGEST_COUNT, type MeterUnit, meterCount } from './meterCount.js'

/** One reading with everything before it counted in. */
export interface MeterPoint {
  readonly day: number
  /** Accumulated since the start of its stretch, in counts; of stretch 0: since the machine's zero. */
  readonly count: number
  /** A stretch ends where the meter fell or jumped and no event says why: across that, nothing can be subtracted. */
  readonly stretch: number
  /** What the display showed, in counts. */
  readonly shown: number
  /** Where it stands in the log. */
  readonly path: string
  /** Index of the service record that it comes from, or −1. */
  readonly record: number
}

export interface AccumulatedMeter {
  readonly unit: MeterUnit
  readonly points: readonly MeterPoint[]
  readonly findings: readonly Finding[]
}

/** The most that a machine of this kind can add in a day, in counts: 24 h; 2,400 km (house rule: 100 km/h all day). */
const MOST_A_DAY = { hours: 24_000, distance: 2_400_000_000_000 } as const

interface Mark {
  readonly day: number
  readonly shown: number
  readonly path: string
  readonly record: number
}

interface Change {
  readonly day: number
  /** What the old display showed last; NaN: it ran over. */
  readonly oldShown: number
  readonly newShown: number
  readonly path: string
}

/**
 * Reads one meter of a log up to a day: readings, the readings of service records, and the meter's own events, sorted
 * by day and added up. For `readMeters` and `computeDue`; NaN days and counts never get past here.
 */
export function accumulateMeter(
  log: MachineLog,
  name: MeterName,
  lastDay: number,
): AccumulatedMeter | undefined {
  const meter = log.meters[name]
  if (meter === undefined) return undefined
  const unit = meter.unit
  const findings: Finding[] = []
  const complain = <Code extends keyof IntervalCodes>(
    code: Code,
    severity: Severity,
    path: string,
    params: IntervalCodes[Code] & Finding['params'],
    related?: string,
  ): void => {
    const document = { kind: 'machine-log', id: log.id } as const
    findings.push({
      code,
      severity,
      document,
      path,
      params,
      ...(related === undefined ? {} : { related: [{ document, path: related }] }),
    })
  }
  const quantity = (count: number) => ({ value: count / COUNTS_PER_UNIT[unit], unit })

  const marks: Mark[] = []
  let sorted = true
  const addMark = (date: string, shown: number, path: string, value: number, record: number): void => {
    const day = dayNumberOf(date)
    if (Number.isNaN(day)) {
      findings.push({
        code: 'calendar/not-a-date',
        severity: 'error',
        document: { kind: 'machine-log', id: log.id },
        path,
        params: { text: String(date).slice(0, 40) },
      })
    } else if (!(shown >= 0 && shown <= LARGEST_COUNT[name])) {
      complain('interval/reading-out-of-bounds', 'error', path, {
        meter: name,
        value: Number.isFinite(value) ? value : String(value),
        most: quantity(LARGEST_COUNT[name]),
      })
    } else if (day <= lastDay) {
      const before = marks[marks.length - 1]
      if (before !== undefined && before.day > day) {
        sorted = false
        if (record < 0) {
          complain('interval/readings-out-of-order', 'info', path, {
            meter: name,
            date,
            after: dateOfDay(before.day),
          })
        }
      }
      marks.push({ day, shown, path, record })
    } else if (record < 0) {
      complain('interval/in-the-future', 'error', path, { what: name, date })
    }
  }
  const readings = meter.readings
  for (let index = 0; index < readings.length; index++) {
    const reading = readings[index]
    if (reading === undefined) continue
    addMark(
      reading.date,
      meterCount(reading.value, unit),
      `/meters/${name}/readings/${index}`,
      reading.value,
      -1,
    )
  }
  for (let index = 0; index < log.records.length; index++) {
    const record = log.records[index]
    const reading = record?.readings[name]
    if (record === undefined || reading === undefined) continue
    const path = `/records/${index}/readings/${name}`
    addMark(record.date, meterCount(reading.value, reading.unit), path, reading.value, index)
  }
  if (!sorted) marks.sort((one, other) => one.day - other.day)

  const changes: Change[] = []
  const events = log.events ?? []
  for (let index = 0; index < events.length; index++) {
    const event = events[index]
    if (event === undefined || !('meter' in event) || event.meter !== name) continue
    const day = dayNumberOf(event.date)
    const oldShown = event.kind === 'meter rollover' ? Number.NaN : meterCount(event.oldReading, unit)
    const newShown = event.kind === 'meter swap' ? meterCount(event.newReading, unit) : 0
    if (day <= lastDay) changes.push({ day, oldShown, newShown, path: `/events/${index}` })
  }
  changes.sort((one, other) => one.day - other.day)

  const modulus = meter.rollover === undefined ? Number.NaN : rolloverModulus(meter.rollover, unit)
  const points: MeterPoint[] = []
  let stretch = 0
  let offset = 0
  let last: Mark | undefined
  let nextChange = 0

  const most = (from: Mark, day: number): number => (day - from.day + 1) * MOST_A_DAY[name]
  /** Takes what a display shows as the next reading; a fall or a jump begins a new stretch. */
  const follow = (mark: Mark): void => {
    if (last !== undefined) {
      const rise = mark.shown - last.shown
      if (rise < 0 || rise > most(last, mark.day)) {
        const params = {
          meter: name,
          before: quantity(last.shown),
          after: quantity(mark.shown),
          from: dateOfDay(last.day),
          to: dateOfDay(mark.day),
        }
        if (rise >= 0) {
          complain(
            'interval/meter-jumps',
            'error',
            mark.path,
            { ...params, most: quantity(most(last, mark.day)) },
            last.path,
          )
          stretch += 1
        } else if (rise + modulus <= most(last, mark.day)) {
          const limit = quantity(modulus)
          complain(
            'interval/rollover-taken',
            'info',
            mark.path,
            { meter: name, before: params.before, after: params.after, limit },
            last.path,
          )
          offset += modulus
        } else {
          complain('interval/meter-falls', 'error', mark.path, params, last.path)
          stretch += 1
        }
      }
    }
    last = mark
  }
  const change = (event: Change): void => {
    const { day, newShown, path } = event
    if (Number.isNaN(event.oldShown)) {
      if (Number.isNaN(modulus)) {
        complain('interval/rollover-limit-missing', 'error', path, { meter: name, date: dateOfDay(day) })
        stretch += 1
      } else {
        offset += modulus
      }
    } else {
      follow({ day, shown: event.oldShown, path, record: -1 })
      offset += event.oldShown - newShown
    }
    last = { day, shown: newShown, path, record: -1 }
  }

  for (let at = 0; at < marks.length; at++) {
    // Readings of one day come smallest first, save that those that the old display could not show follow the change.
    let mark = marks[at]
    if (mark === undefined) continue
    if (marks[at + 1]?.day === mark.day) mark = takeSmallest(marks, at, last?.shown ?? 0)
    for (
      let due = changes[nextChange];
      due !== undefined && comesBefore(due, mark, last);
      due = changes[nextChange]
    ) {
      nextChange += 1
      change(due)
    }
    if (last !== undefined && last.day === mark.day && last.shown === mark.shown && points.length > 0) {
      if (last.record < 0 && mark.record < 0 && last.path.startsWith('/meters/')) {
        complain(
          'interval/reading-repeated',
          'info',
          mark.path,
          { meter: name, date: dateOfDay(mark.day) },
          last.path,
        )
      }
      if (mark.record < 0) continue
    }
    follow(mark)
    points.push({
      day: mark.day,
      count: mark.shown + offset,
      stretch,
      shown: mark.shown,
      path: mark.path,
      record: mark.record,
    })
  }
  for (let due = changes[nextChange]; due !== undefined; due = changes[nextChange]) {
    nextChange += 1
    change(due)
    // With no reading after it, the change itself is the last reading.
    points.push({
      day: due.day,
      count: due.newShown + offset,
      stretch,
      shown: due.newShown,
      path: due.path,
      record: -1,
    })
  }
  return { unit, points, findings }
}

/** A change comes before a reading of a later day, and before one of its own day that the old display could not show. */
function comesBefore(change: Change, mark: Mark, last: Mark | undefined): boolean {
  if (change.day !== mark.day) return change.day < mark.day
  return (last !== undefined && mark.shown < last.shown) || mark.shown > change.oldShown
}

/** Brings the reading to take next to place `at`: the smallest of its day that does not fall, else the smallest. */
function takeSmallest(marks: Mark[], at: number, shownBefore: number): Mark {
  let best = at
  for (let index = at + 1; marks[index]?.day === marks[at]?.day; index++) {
    if (rank(marks[index], shownBefore) < rank(marks[best], shownBefore)) best = index
  }
  const [taken] = marks.splice(best, 1)
  marks.splice(at, 0, taken as Mark)
  return taken as Mark
}

function rank(mark: Mark | undefined, shownBefore: number): number {
  const shown = mark?.shown ?? 0
  return shown >= shownBefore ? shown : shown + 2 * LARGEST_COUNT.distance
}

/** Past `rollover` the display shows zero: the modulus is one more of the last digit that the limit is written with. */
function rolloverModulus(rollover: number, unit: MeterUnit): number {
  const decimals = /\.([0-9]+)$/.exec(String(rollover))?.[1]?.length ?? 0
  return meterCount(rollover, unit) + meterCount(10 ** -decimals, unit)
}
