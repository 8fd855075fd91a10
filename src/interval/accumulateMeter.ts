import { asText } from '../base/index.js'
import { type DateText, dayNumberOf } from '../calendar/index.js'
import type { MachineLog, MeterName } from '../spec/index.js'
import { addUpReadings, type MeterChange } from './addUpReadings.js'
import { MAX_METER_COUNT, type MeterUnit, meterCount, quantityFromCounts } from './meterCount.js'
import { type MeterPoint, type MeterState, noteReading } from './meterState.js'

/**
 * Reads one meter of a log up to a day: it sorts and adds up the readings of the log and its service records,
 * and the events. Invalid days and values are noted and left out.
 */
export function accumulateMeter(log: MachineLog, name: MeterName, lastDay: number): MeterState | undefined {
  // Hot path: a comparison is several times faster than a lookup by a variable name.
  const meter = name === 'hours' ? log.meters.hours : log.meters.distance
  if (meter === undefined) return undefined
  const { unit, readings, rollover } = meter
  const { records, events = [] } = log
  let modulus = NaN
  if (rollover !== undefined) {
    // A display restarts from zero one unit of its last digit above the limit.
    const decimals = String(rollover).split('.')[1]?.length ?? 0
    modulus = meterCount(rollover, unit) + meterCount(10 ** -decimals, unit)
  }
  const state: MeterState = {
    name,
    unit,
    modulus,
    points: [],
    notes: [],
    keptCount: 0,
    last: undefined,
    offset: 0,
    stretch: 0,
  }
  let index = 0
  for (const { date, value } of readings) addPoint(state, 'readings', index++, date, value, unit, lastDay)
  index = 0
  for (const { date, readings: recordReadings } of records) {
    const reading = name === 'hours' ? recordReadings.hours : recordReadings.distance
    if (reading !== undefined) addPoint(state, 'records', index, date, reading.value, reading.unit, lastDay)
    index++
  }
  state.last = undefined
  sortByDay(state.points)
  const changes: MeterChange[] = []
  index = -1
  for (const event of events) {
    index++
    if (!('meter' in event) || event.meter !== name) continue
    const { kind, date } = event
    const day = dayNumberOf(date)
    const shown = kind === 'meter rollover' ? NaN : meterCount(event.oldReading, unit)
    const newShown = kind === 'meter swap' ? meterCount(event.newReading, unit) : 0
    if (day <= lastDay)
      changes.push({ day, date, shown, count: 0, stretch: 0, list: 'events', index, newShown })
  }
  changes.sort((first, second) => first.day - second.day)
  addUpReadings(state, changes)
  return state
}

/** Adds a valid reading; notes an invalid one. */
function addPoint(
  state: MeterState,
  list: 'readings' | 'records',
  index: number,
  date: DateText,
  value: number,
  unit: MeterUnit,
  lastDay: number,
): void {
  const { points, name } = state
  const day = dayNumberOf(date)
  // Only a number: JavaScript would convert a string to a number.
  const shown = typeof value === 'number' ? meterCount(value, unit) : NaN
  const max = MAX_METER_COUNT[name]
  const point: MeterPoint = { day, date, shown, count: shown, stretch: 0, list, index }
  if (Number.isNaN(day)) {
    noteReading(state, 'calendar/not-a-date', 'error', point, { text: asText(date).slice(0, 40) })
  } else if (!(shown >= 0 && shown <= max)) {
    noteReading(state, 'interval/reading-out-of-bounds', 'error', point, {
      meter: name,
      value: Number.isFinite(value) ? value : asText(value).slice(0, 40),
      largest: quantityFromCounts(max, state.unit),
    })
  } else if (day <= lastDay) {
    const { last } = state
    if (list === 'readings' && last && last.day > day) {
      const params = { meter: name, date, after: last.date }
      noteReading(state, 'interval/readings-out-of-order', 'info', point, params)
    } else state.last = point
    points.push(point)
  } else if (list === 'readings') {
    noteReading(state, 'interval/date-in-the-future', 'error', point, { what: name, date })
  }
}

interface DatedItem {
  readonly day: number
  readonly shown?: number
}

/** Sorts by day, then by reading; equal items, and those without a reading, keep their order. */
export function sortByDay(list: DatedItem[]): void {
  // Undefined minus undefined is NaN, which keeps the order.
  list.sort((one, other) => one.day - other.day || (one.shown as number) - (other.shown as number))
}
