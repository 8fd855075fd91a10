import { addToDay, type DateText, dateOfDay } from '../calendar/index.js'
import type { MachineLog } from '../spec/index.js'
import type { MeterPoint } from './meterState.js'
import { afterDaysOfUse, pauseDays } from './pauseDays.js'

/**
 * The day on which the meter reaches a count: between the readings around it, or ahead at its average of the days of use
 * in this stretch; unknown without two days, or past the calendar's end.
 */
export function projectDate(
  pauses: MachineLog['pauses'],
  points: readonly MeterPoint[],
  due: number,
): DateText | undefined {
  const now = points.at(-1)
  if (now === undefined) return undefined
  const reached = now.count >= due
  let before: MeterPoint | undefined
  let after = now
  for (const point of points) {
    if (point.stretch !== now.stretch) continue
    if (point.count >= due) {
      after = point
      break
    }
    // Of the readings that fall short, the last one before a count that is reached, the first one for an average.
    if (before === undefined || reached) before = point
  }
  if (before === undefined) return reached ? dateOfDay(after.day) : undefined
  const days = after.day - before.day - (reached ? 0 : pauseDays(pauses, before.day, after.day))
  const rise = after.count - before.count
  if (!reached && (days <= 0 || rise <= 0)) return undefined
  const ahead = Math.ceil(((due - after.count) * days) / rise)
  const day = addToDay(afterDaysOfUse(pauses, after.day, ahead), 0, 0)
  return Number.isNaN(day) ? undefined : dateOfDay(day)
}
