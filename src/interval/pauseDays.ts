import { dayNumberOf } from '../calendar/dayNumberOf.js'
import type { MachineLog } from '../spec/machineLog.js'

type Pauses = NonNullable<MachineLog['pauses']>

/** How many of the days after `fromDay`, up to and with `toDay`, the machine was out of use; pauses may overlap. */
export function pauseDays(pauses: Pauses | undefined, fromDay: number, toDay: number): number {
  if (pauses === undefined || pauses.length === 0) return 0
  let counted = 0
  let reached = fromDay
  for (const { start, end } of sortPauses(pauses)) {
    const from = Math.max(start, reached)
    const to = Math.min(end, toDay)
    if (to > from) {
      counted += to - from
      reached = to
    }
  }
  return counted
}

/** The day on which so many days of use have passed since `fromDay`. */
export function afterDaysOfUse(pauses: Pauses | undefined, fromDay: number, days: number): number {
  let day = fromDay + days
  if (pauses === undefined || pauses.length === 0 || days <= 0) return day
  let reached = fromDay
  for (const { start, end } of sortPauses(pauses)) {
    const from = Math.max(start, reached)
    if (end <= from || from >= day) continue
    day += end - from
    reached = end
  }
  return day
}

/** Sorted by start; pauses that are no dates count for nothing. */
function sortPauses(pauses: Pauses): { readonly start: number; readonly end: number }[] {
  return pauses
    .map((pause) => ({ start: dayNumberOf(pause.from), end: dayNumberOf(pause.to) }))
    .filter(({ start, end }) => end > start)
    .sort((one, other) => one.start - other.start)
}
