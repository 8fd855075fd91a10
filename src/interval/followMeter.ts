import { MOST_A_DAY, quantityOf } from './meterCount.js'
import { type MeterPoint, type MeterWalk, noteReading } from './meterWalk.js'

/** A swap, a reset or a rollover, as the last reading of the old display; NaN: it ran over. */
export interface MeterChange extends MeterPoint {
  readonly newShown: number
}

/**
 * Adds up a meter from reading to reading, through its changes by day. A change comes before every reading of a later day, and
 * before those of its own day that the old display could not show. With no reading after it, the change itself is the newest
 * reading.
 */
export function followMeter(walk: MeterWalk, changes: readonly MeterChange[] = []): void {
  const { points } = walk
  let waiting = points
  for (const change of changes) {
    const { day, date, shown, newShown } = change
    // Smallest first within a day: the new display's readings may stand before the old one's.
    waiting = waiting.filter((point) => {
      const atLeast = walk.last?.shown ?? 0
      const before = point.day === day ? point.shown >= atLeast && !(point.shown > shown) : point.day < day
      if (before) takePoint(walk, point)
      return !before
    })
    const { modulus } = walk
    if (!Number.isNaN(shown)) {
      countOn(walk, change)
      walk.offset += shown - newShown
    } else if (Number.isNaN(modulus)) {
      noteReading(walk, 'interval/rollover-limit-missing', 'error', change, { meter: walk.name, date })
      walk.stretch += 1
    } else walk.offset += modulus
    walk.last = { ...change, shown: newShown, count: newShown + walk.offset, stretch: walk.stretch }
  }
  if (waiting.length === 0 && walk.last !== undefined) points[walk.kept++] = walk.last
  for (const point of waiting) takePoint(walk, point)
  if (walk.kept < points.length) points.length = walk.kept
}

/**
 * Counts a reading in, unless it says again what the last one said. A service record keeps its reading; a line that is written
 * twice is noted.
 */
function takePoint(walk: MeterWalk, point: MeterPoint): void {
  const { last, name } = walk
  if (last?.day === point.day && last.shown === point.shown && point.list === 'readings') {
    if (last.list === 'readings')
      noteReading(walk, 'interval/reading-repeated', 'info', point, { meter: name, date: point.date }, last)
    if (last.list !== 'events') return
  }
  countOn(walk, point)
  walk.points[walk.kept++] = point
}

/** Counts a reading on from the one before it; a fall or a jump that nothing explains begins a new stretch. */
function countOn(walk: MeterWalk, point: MeterPoint): void {
  const { last, name: meter, unit, modulus } = walk
  if (last !== undefined) {
    const rise = point.shown - last.shown
    const most = (point.day - last.day + 1) * (meter === 'hours' ? MOST_A_DAY.hours : MOST_A_DAY.distance)
    if (rise < 0 || rise > most) {
      const before = quantityOf(last.shown, unit)
      const after = quantityOf(point.shown, unit)
      const ends = { meter, before, after, from: last.date, to: point.date }
      if (rise > most) {
        noteReading(
          walk,
          'interval/meter-jumps',
          'error',
          point,
          { ...ends, most: quantityOf(most, unit) },
          last,
        )
        walk.stretch += 1
      } else if (rise + modulus <= most) {
        const params = { meter, before, after, limit: quantityOf(modulus, unit) }
        noteReading(walk, 'interval/rollover-taken', 'info', point, params, last)
        walk.offset += modulus
      } else {
        noteReading(walk, 'interval/meter-falls', 'error', point, ends, last)
        walk.stretch += 1
      }
    }
  }
  point.count = point.shown + walk.offset
  point.stretch = walk.stretch
  walk.last = point
}
