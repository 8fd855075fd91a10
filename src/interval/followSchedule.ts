import type { DueCase, Origin } from './dueCase.js'
import { addOnScale, type LimitScale } from './limitScale.js'
import type { Limit, Limits } from './readLimits.js'
import { pointAt } from './readMeterScale.js'

export interface ScheduledPoint {
  /** The next point; NaN where a completion's place is not known. */
  readonly due: number
  readonly note?: 'early-counts' | 'early-does-not-count' | 'count-restarted' | undefined
  /** The point that the note is about. */
  readonly noteAt: number
}

/**
 * The next due point when the count keeps to a schedule. `schedule`: due points never move; a service counts for
 * the point that it comes after, or the coming one when it comes inside the window before it (no window stated: in the
 * second half of the way to it, house rule); an earlier one does not count. `schedule inside window`: inside the
 * window, early or late, due points do not move; outside it the count starts again from the completion.
 */
export function followSchedule(
  { facts, completions, zero, limits }: DueCase,
  by: keyof Limits,
  repeat: Limit,
  scale: LimitScale,
): ScheduledPoint {
  const window = limits.window?.[by]
  const { months = 0, counts = 0 } = window ?? {}
  const isFixed = facts.intervals.countFrom !== 'schedule inside window'
  // The first interval has its own length; after a restart all are equal.
  let first = limits.opening[by] ?? repeat
  let anchor = placeOf(scale, zero)
  let times = 0
  let noteAt = NaN
  let note: ScheduledPoint['note']
  const pointAfter = (count: number): number =>
    addOnScale(scale, anchor, first.months + repeat.months * count, first.counts + repeat.counts * count)
  for (const completion of completions) {
    const place = placeOf(scale, completion)
    noteAt = pointAfter(times)
    if (Number.isNaN(place) || Number.isNaN(noteAt)) return { due: NaN, noteAt }
    const early = addOnScale(scale, noteAt, -months, -counts)
    const before = times > 0 ? pointAfter(times - 1) : anchor
    const inSecondHalf = isFixed && (!window || Number.isNaN(early))
    const answers =
      place >= noteAt || (inSecondHalf ? (place - before) * 2 > noteAt - before : place >= early)
    if (!isFixed && !(answers && place <= addOnScale(scale, noteAt, months, counts))) {
      anchor = place
      first = repeat
      times = 0
      note = 'count-restarted'
      continue
    }
    note = place >= noteAt ? undefined : answers ? 'early-counts' : 'early-does-not-count'
    if (answers) times += 1
    while (isFixed && pointAfter(times) <= place) times += 1
  }
  return { due: pointAfter(times), note, noteAt }
}

/** Where a count began; NaN where nothing can be subtracted from now. */
function placeOf({ unit, points }: LimitScale, origin: Origin): number {
  if (unit === 'd') return origin.day
  const point = pointAt(points, origin)
  return point && point.stretch === points.at(-1)?.stretch ? point.count : NaN
}
