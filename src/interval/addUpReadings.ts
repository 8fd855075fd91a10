import { MAX_PER_DAY, quantityFromCounts } from './meterCount.js'
import { type MeterPoint, type MeterState, noteReading } from './meterState.js'

/** A swap, reset or rollover as the last reading of the old display; `shown` is NaN for a rollover. */
export interface MeterChange extends MeterPoint {
  readonly newShown: number
}

/**
 * Adds up the readings of a meter and its changes, which are sorted by day. A change comes before the readings
 * of later days, and before those of the same day that the old display could not show. If no reading follows, the change counts
 * as the newest reading.
 */
export function addUpReadings(state: MeterState, changes: readonly MeterChange[]): void {
  const { points } = state
  let next = 0
  // Readings of the day of the last change that its old display could not show.
  let held: MeterPoint[] = []
  for (const change of changes) {
    const { day, date, shown, newShown } = change
    // Kept readings are written to the front of `points`, never past `next`.
    for (let point = points[next]; point && point.day <= day; point = points[++next]) held.push(point)
    // Within a day the smallest reading is first: those of the new display may precede those of the old one.
    held = held.filter((point) => {
      const minShown = state.last?.shown ?? 0
      const isBeforeChange =
        point.day === day ? point.shown >= minShown && !(point.shown > shown) : point.day < day
      if (isBeforeChange) addMeterPoint(state, point)
      return !isBeforeChange
    })
    const { modulus } = state
    if (!Number.isNaN(shown)) {
      addToCount(state, change)
      state.offset += shown - newShown
    } else if (Number.isNaN(modulus)) {
      noteReading(state, 'interval/rollover-limit-missing', 'error', change, { meter: state.name, date })
      state.stretch++
    } else state.offset += modulus
    state.last = { ...change, shown: newShown, count: newShown + state.offset, stretch: state.stretch }
  }
  const rest = next ? held.concat(points.slice(next)) : points
  if (rest.length === 0 && state.last) points[state.keptCount++] = state.last
  else for (const point of rest) addMeterPoint(state, point)
  points.length = state.keptCount
}

/** Adds a reading unless it repeats the last one, which is noted. The reading of a service record is always kept. */
function addMeterPoint(state: MeterState, point: MeterPoint): void {
  const { last, name } = state
  if (last?.day === point.day && last.shown === point.shown && point.list === 'readings') {
    if (last.list === 'readings')
      noteReading(state, 'interval/reading-repeated', 'info', point, { meter: name, date: point.date }, last)
    if (last.list !== 'events') return
  }
  addToCount(state, point)
  state.points[state.keptCount++] = point
}

/** Adds the rise from the last reading to this one; an unexplained fall or jump begins a new stretch. */
function addToCount(state: MeterState, point: MeterPoint): void {
  const { last, name: meter, unit, modulus } = state
  if (last) {
    const rise = point.shown - last.shown
    const max = (point.day - last.day + 1) * MAX_PER_DAY[meter]
    if (rise < 0 || rise > max) {
      const isBeforeChange = quantityFromCounts(last.shown, unit)
      const after = quantityFromCounts(point.shown, unit)
      if (rise < 0 && rise + modulus <= max) {
        const params = { meter, before: isBeforeChange, after, limit: quantityFromCounts(modulus, unit) }
        noteReading(state, 'interval/rollover-assumed', 'info', point, params, last)
        state.offset += modulus
      } else {
        const changeParams = { meter, before: isBeforeChange, after, from: last.date, to: point.date }
        if (rise < 0) noteReading(state, 'interval/meter-falls', 'error', point, changeParams, last)
        else {
          const params = { ...changeParams, largest: quantityFromCounts(max, unit) }
          noteReading(state, 'interval/meter-jumps', 'error', point, params, last)
        }
        state.stretch++
      }
    }
  }
  point.count = point.shown + state.offset
  point.stretch = state.stretch
  state.last = point
}
