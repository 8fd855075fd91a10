import {
  complainOfMeter,
  followPoint,
  isRepeated,
  type MeterPoint,
  type MeterWalk,
  rolloverModulus,
} from './meterWalk.js'

/** A swap, a reset or a rollover. */
export interface MeterChange {
  readonly day: number
  readonly date: string
  /** What the old display showed last, in counts; NaN: it ran over. */
  readonly oldShown: number
  readonly newShown: number
  /** Place in the log's events. */
  readonly index: number
}

/**
 * Adds up a meter that was swapped, reset or ran over. A change comes before every reading of a later day, and before those of
 * its own day that the old display could not show. With no reading after it, the change itself is the newest reading.
 */
export function followMeterChanges(walk: MeterWalk, changes: MeterChange[]): void {
  const waiting = walk.points.splice(0)
  changes.sort((one, other) => one.day - other.day)
  let last: MeterPoint | undefined
  const take = (point: MeterPoint): void => {
    if (last !== undefined && isRepeated(walk, last, point)) return
    followPoint(walk, last, point)
    walk.points.push(point)
    last = point
  }
  for (const change of changes) {
    const fits = (point: MeterPoint): boolean =>
      point.day < change.day ||
      (point.day === change.day && point.shown >= (last?.shown ?? 0) && !(point.shown > change.oldShown))
    // Smallest first within a day: the new display's readings may stand before the old one's.
    for (let at = waiting.findIndex(fits); at >= 0; at = waiting.findIndex(fits)) {
      for (const point of waiting.splice(at, 1)) take(point)
    }
    const { day, date, oldShown, newShown, index } = change
    const old: MeterPoint = { day, date, shown: oldShown, count: 0, stretch: 0, list: 'events', index }
    if (Number.isNaN(oldShown)) {
      const modulus = rolloverModulus(walk)
      if (Number.isNaN(modulus)) {
        complainOfMeter(walk, 'interval/rollover-limit-missing', 'error', old, { meter: walk.name, date })
        walk.stretch += 1
      } else {
        walk.offset += modulus
      }
    } else {
      followPoint(walk, last, old)
      walk.offset += oldShown - newShown
    }
    last = { ...old, shown: newShown, count: newShown + walk.offset, stretch: walk.stretch }
  }
  const newest = last
  for (const point of waiting) take(point)
  if (waiting.length === 0 && newest !== undefined) walk.points.push(newest)
}
