import { type DateText, daysBetween } from '../calendar/index.js'
import { type CountedMeterReading, readMeters } from '../interval/index.js'
import { type Exact, exactOf, subtract } from '../quantity/index.js'
import type { MachineLog } from '../spec/index.js'

/** The hours between two days according to the readings; without `max` there is no upper limit. */
export interface HoursBetween {
  readonly min: Exact
  readonly max?: Exact
}

/**
 * The hours that a machine ran between two days, from the readings of those days, or else from the readings
 * before and after. Undefined if there is no hour meter, no reading up to the first day, or a break in the
 * readings.
 */
export function calculateHoursBetween(
  log: MachineLog,
  from: DateText,
  to: DateText,
): HoursBetween | undefined {
  const { hours = [] } = readMeters(log)
  const start = findReadingsAround(hours, from)
  const end = findReadingsAround(hours, to)
  const usedReadings = [start.last, end.last, start.next, end.next].filter(
    (candidate) => candidate !== undefined,
  )
  if (start.last === undefined || end.last === undefined) return undefined
  if (usedReadings.some(({ stretch }) => stretch !== start.last?.stretch)) return undefined
  const subtractReadings = (candidate: CountedMeterReading, other: CountedMeterReading) =>
    subtract(exactOf(candidate.total.value), exactOf(other.total.value))
  const shortestHours = start.next === undefined ? exactOf(0) : subtractReadings(end.last, start.next)
  const min = shortestHours.n < 0n ? exactOf(0) : shortestHours
  return end.next === undefined ? { min } : { min, max: subtractReadings(end.next, start.last) }
}

/**
 * The last reading up to a day, and the first reading from that day on. If the day has a reading, both are that one.
 */
function findReadingsAround(readings: readonly CountedMeterReading[], day: DateText) {
  const before = readings.filter(({ date }) => daysBetween(date, day) > 0)
  const readingsOnDay = readings.filter(({ date }) => daysBetween(date, day) === 0)
  const after = readings.filter(({ date }) => daysBetween(date, day) < 0)
  return { last: readingsOnDay[0] ?? before.at(-1), next: readingsOnDay.at(-1) ?? after[0] }
}
