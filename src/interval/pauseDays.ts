import { dayNumberOf } from '../calendar/dayNumberOf.js'
import type { MachineLog } from '../spec/machineLog.js'

/**
 * How many of the days after `fromDay`, up to and with `toDay`, the machine was out of use; pauses may overlap, and those that
 * are no dates count for nothing. With `putOff` each pause that begins before the end puts the end off by its whole length.
 */
export function pauseDays(
  pauses: MachineLog['pauses'],
  fromDay: number,
  toDay: number,
  putOff = false,
): number {
  let counted = 0
  if (pauses === undefined) return counted
  const spans = pauses
    .map(({ from, to }) => ({ start: dayNumberOf(from), end: dayNumberOf(to) }))
    .filter(({ start, end }) => end > start)
    .sort((one, other) => one.start - other.start)
  let reached = fromDay
  for (const { start, end } of spans) {
    const from = Math.max(start, reached)
    const to = putOff ? end : Math.min(end, toDay)
    if (to > from && from < toDay + (putOff ? counted : 0)) {
      counted += to - from
      reached = to
    }
  }
  return counted
}

/** The day on which so many days of use have passed since `fromDay`. */
export function afterDaysOfUse(pauses: MachineLog['pauses'], fromDay: number, days: number): number {
  return fromDay + days + pauseDays(pauses, fromDay, fromDay + days, true)
}
