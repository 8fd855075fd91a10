import { dayNumberOf } from '../calendar/index.js'
import type { MachineLog } from '../spec/index.js'

/**
 * The days after `fromDay`, up to and including `toDay`, on which the machine was out of use. Pauses may overlap; invalid dates
 * are ignored. With `extendsEnd` each pause that begins before the end moves the end by its length.
 */
export function pauseDays(
  pauses: MachineLog['pauses'],
  fromDay: number,
  toDay: number,
  extendsEnd = false,
): number {
  let counted = 0
  if (pauses === undefined) return counted
  let reached = fromDay
  // Dates sort like their texts; an invalid one gives NaN, which is neither after nor before.
  for (const { from, to } of [...pauses].sort((one, other) => (one.from < other.from ? -1 : 1))) {
    const start = Math.max(dayNumberOf(from), reached)
    const end = extendsEnd ? dayNumberOf(to) : Math.min(dayNumberOf(to), toDay)
    if (end > start && start < toDay + (extendsEnd ? counted : 0)) {
      counted += end - start
      reached = end
    }
  }
  return counted
}

/** The day on which this many days of use have passed since `fromDay`. */
export function dayAfterUse(pauses: MachineLog['pauses'], fromDay: number, days: number): number {
  return fromDay + days + pauseDays(pauses, fromDay, fromDay + days, true)
}
