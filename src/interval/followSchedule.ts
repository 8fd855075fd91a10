import type { DueCase, Origin } from './dueCase.js'
import { addOnScale, type LimitScale } from './limitScale.js'
import type { Limit, Limits } from './readLimits.js'
import { pointAt } from './readMeterScale.js'

export interface ScheduledPoint {
  /** The next due point; NaN if the place of a completion is not known. */
  readonly due: number
  readonly note?: 'early-counts' | 'early-does-not-count' | 'count-restarted' | undefined
  /** The point that the note is about. */
  readonly noteAt: number
}

/**
 * The next due point of a schedule. `schedule`: due points never move. A service counts for a due point that has passed, or
 * for the next one if it is done inside the window before it (without a stated window in the second half of the interval, house
 * rule); an earlier one does not count. `schedule inside window`: if a service is done inside the window, early or late, due
 * points do not move; otherwise the count starts again from the completion.
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
  // The first interval may have another length; after a restart all are equal.
  let firstLimit = limits.opening[by] ?? repeat
  let anchor = placeOf(scale, zero)
  let times = 0
  let noteAt = NaN
  let note: ScheduledPoint['note']
  const pointAfter = (count: number): number =>
    addOnScale(
      scale,
      anchor,
      firstLimit.months + repeat.months * count,
      firstLimit.counts + repeat.counts * count,
    )
  for (const completion of completions) {
    const place = placeOf(scale, completion)
    noteAt = pointAfter(times)
    if (Number.isNaN(place) || Number.isNaN(noteAt)) return { due: NaN, noteAt }
    const windowStart = addOnScale(scale, noteAt, -months, -counts)
    const previousPoint = times > 0 ? pointAfter(times - 1) : anchor
    const inSecondHalf = isFixed && (!window || Number.isNaN(windowStart))
    const doesCount =
      place >= noteAt ||
      (inSecondHalf ? (place - previousPoint) * 2 > noteAt - previousPoint : place >= windowStart)
    if (!isFixed && !(doesCount && place <= addOnScale(scale, noteAt, months, counts))) {
      anchor = place
      firstLimit = repeat
      times = 0
      note = 'count-restarted'
      continue
    }
    note = place >= noteAt ? undefined : doesCount ? 'early-counts' : 'early-does-not-count'
    if (doesCount) times += 1
    while (isFixed && pointAfter(times) <= place) times += 1
  }
  return { due: pointAfter(times), note, noteAt }
}

/** The place of an origin on the scale; NaN if it cannot be subtracted from the current reading. */
function placeOf({ unit, points }: LimitScale, origin: Origin): number {
  if (unit === 'd') return origin.day
  const point = pointAt(points, origin)
  return point && point.stretch === points.at(-1)?.stretch ? point.count : NaN
}
