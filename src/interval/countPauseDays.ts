import { dayNumberOf } from '../calendar/index.js'
import type { MachineLog } from '../spec/index.js'

/**
 * The days after `fromDay`, up to and including `toDay`, on which the machine was out of use. Pauses may overlap; invalid dates
 * are ignored. With `extendsEnd`, each pause that begins before the end delays the end by its length.
 */
export function countPauseDays(
  pauses: MachineLog['pauses'],
  fromDay: number,
  toDay: number,
  extendsEnd = false,
): number {
  let pausedDays = 0
  if (pauses === undefined) return pausedDays
  let countedTo = fromDay
  // Dates sort as strings; an invalid date gives NaN, and no comparison with NaN is true.
  for (const { from, to } of [...pauses].sort((first, second) => (first.from < second.from ? -1 : 1))) {
    const start = Math.max(dayNumberOf(from), countedTo)
    const end = extendsEnd ? dayNumberOf(to) : Math.min(dayNumberOf(to), toDay)
    if (end > start && start < toDay + (extendsEnd ? pausedDays : 0)) {
      pausedDays += end - start
      countedTo = end
    }
  }
  return pausedDays
}

/** The day on which this many days of use have passed since `fromDay`. */
export function findDayAfterUse(pauses: MachineLog['pauses'], fromDay: number, days: number): number {
  return fromDay + days + countPauseDays(pauses, fromDay, fromDay + days, true)
}
