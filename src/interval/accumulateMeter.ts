import { dayNumberOf } from '../calendar/dayNumberOf.js'
import type { DateText } from '../calendar/index.js'
import type { MachineLog, MeterName } from '../spec/machineLog.js'
import { followMeterChanges, type MeterChange } from './followMeterChanges.js'
import { LARGEST_COUNT, type MeterUnit, meterCount } from './meterCount.js'
import {
  complainOfMeter,
  followPoint,
  isRepeated,
  type MeterPoint,
  type MeterWalk,
  meterQuantity,
  pathOfPoint,
} from './meterWalk.js'

/**
 * Reads one meter of a log up to a day: readings, the readings of service records, and the meter's own events, sorted
 * by day and added up. For `readMeters` and `computeDue`; NaN days and counts never get past here.
 */
export function accumulateMeter(log: MachineLog, name: MeterName, lastDay: number): MeterWalk | undefined {
  const meter = log.meters[name]
  if (meter === undefined) return undefined
  const { unit, readings } = meter
  const { records, events } = log
  const points: MeterPoint[] = []
  const walk: MeterWalk = { log, name, unit, points, findings: [], offset: 0, stretch: 0 }
  for (let index = 0; index < readings.length; index++) {
    const reading = readings[index]
    if (reading !== undefined) addPoint(walk, reading.date, reading.value, unit, 'readings', index, lastDay)
  }
  for (let index = 0; index < records.length; index++) {
    const record = records[index]
    const reading = record?.readings[name]
    if (record === undefined || reading === undefined) continue
    addPoint(walk, record.date, reading.value, reading.unit, 'records', index, lastDay)
  }

  let changes: MeterChange[] | undefined
  if (events !== undefined) {
    for (let index = 0; index < events.length; index++) {
      const event = events[index]
      if (event === undefined || !('meter' in event) || event.meter !== name) continue
      const day = dayNumberOf(event.date)
      const oldShown = event.kind === 'meter rollover' ? Number.NaN : meterCount(event.oldReading, unit)
      const newShown = event.kind === 'meter swap' ? meterCount(event.newReading, unit) : 0
      if (day <= lastDay) {
        changes ??= []
        changes.push({ day, date: event.date, oldShown, newShown, index })
      }
    }
  }
  if (changes !== undefined) followMeterChanges(walk, changes)
  else followPoints(walk)
  return walk
}

/** Adds a reading where it is one, and says what is wrong with it where it is none. */
function addPoint(
  walk: MeterWalk,
  date: DateText,
  value: number,
  unit: MeterUnit,
  list: 'readings' | 'records',
  index: number,
  lastDay: number,
): void {
  const { points, name } = walk
  const day = typeof date === 'string' ? dayNumberOf(date) : Number.NaN
  const shown = meterCount(value, unit)
  const point: MeterPoint = { day, date, shown, count: shown, stretch: 0, list, index }
  if (Number.isNaN(day)) {
    walk.findings.push({
      code: 'calendar/not-a-date',
      severity: 'error',
      document: { kind: 'machine-log', id: walk.log.id },
      path: pathOfPoint(walk, point),
      params: { text: String(date).slice(0, 40) },
    })
  } else if (!(shown >= 0 && shown <= LARGEST_COUNT[name])) {
    complainOfMeter(walk, 'interval/reading-out-of-bounds', 'error', point, {
      meter: name,
      value: Number.isFinite(value) ? value : String(value),
      most: meterQuantity(walk, LARGEST_COUNT[name]),
    })
  } else if (day <= lastDay) {
    const newest = points[points.length - 1]
    if (list === 'readings' && newest !== undefined && newest.day > day) {
      complainOfMeter(walk, 'interval/readings-out-of-order', 'info', point, {
        meter: name,
        date,
        after: newest.date,
      })
    }
    insertPoint(points, point)
  } else if (list === 'readings') {
    complainOfMeter(walk, 'interval/in-the-future', 'error', point, { what: name, date })
  }
}

/** Keeps readings by day, and smallest first within a day. */
function insertPoint(points: MeterPoint[], point: MeterPoint): void {
  let at = points.length
  for (; at > 0; at--) {
    const before = points[at - 1]
    if (
      before === undefined ||
      before.day < point.day ||
      (before.day === point.day && before.shown <= point.shown)
    )
      break
  }
  if (at === points.length) points.push(point)
  else points.splice(at, 0, point)
}

/** Adds up a meter that was never changed. */
function followPoints(walk: MeterWalk): void {
  const { points } = walk
  let last: MeterPoint | undefined
  let kept = 0
  for (let at = 0; at < points.length; at++) {
    const point = points[at]
    if (point === undefined || (last !== undefined && isRepeated(walk, last, point))) continue
    followPoint(walk, last, point)
    last = point
    points[kept++] = point
  }
  if (kept < points.length) points.length = kept
}
