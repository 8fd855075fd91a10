import type { CountOrigin, DueCase } from './dueCase.js'
import type { Limit, Limits } from './readLimits.js'
import { addLimit, findPoint, type LimitScale } from './readMeterScale.js'

export interface ScheduledPoint {
  /** The next due point; NaN if the position of a completion is not known. */
  readonly due: number
  readonly note?: 'early-service-counts' | 'early-service-does-not-count' | 'count-restarted' | undefined
  /** The point that the note is about. */
  readonly notedPoint: number
}

/**
 * The next due point of a schedule. `schedule`: due points never move. A service counts for a due point that
 * has passed, or for the next one if it is done inside the window before it (without a stated window, in the
 * second half of the interval: house rule). An earlier service does not count. `schedule inside window`: if a
 * service is done inside the window, early or late, due points do not move; otherwise the count starts again
 * from the completion.
 */
export function findNextDuePoint(
  { facts, completions, origin, limits }: DueCase,
  by: keyof Limits,
  repeat: Limit,
  scale: LimitScale,
): ScheduledPoint {
  const window = limits.window?.[by]
  const { months = 0, counts = 0 } = window ?? {}
  const isFixedSchedule = facts.intervals.countFrom !== 'schedule inside window'
  // The first interval may have another length; after a restart all intervals are equal.
  let firstLimit = limits.opening[by] ?? repeat
  let anchor = findPosition(scale, origin)
  let times = 0
  let notedPoint = NaN
  let note: ScheduledPoint['note']
  const findDuePointAfter = (count: number): number =>
    addLimit(
      scale,
      anchor,
      firstLimit.months + repeat.months * count,
      firstLimit.counts + repeat.counts * count,
    )
  for (const completion of completions) {
    const position = findPosition(scale, completion)
    notedPoint = findDuePointAfter(times)
    if (Number.isNaN(position) || Number.isNaN(notedPoint)) return { due: NaN, notedPoint }
    const windowStart = addLimit(scale, notedPoint, -months, -counts)
    const previousPoint = times > 0 ? findDuePointAfter(times - 1) : anchor
    const inSecondHalf = isFixedSchedule && (!window || Number.isNaN(windowStart))
    const isCounted =
      position >= notedPoint ||
      (inSecondHalf ? (position - previousPoint) * 2 > notedPoint - previousPoint : position >= windowStart)
    if (!isFixedSchedule && !(isCounted && position <= addLimit(scale, notedPoint, months, counts))) {
      anchor = position
      firstLimit = repeat
      times = 0
      note = 'count-restarted'
      continue
    }
    note =
      position >= notedPoint ? undefined : isCounted ? 'early-service-counts' : 'early-service-does-not-count'
    if (isCounted) times += 1
    while (isFixedSchedule && findDuePointAfter(times) <= position) times += 1
  }
  return { due: findDuePointAfter(times), note, notedPoint }
}

/** The position of an origin on the scale; NaN if it cannot be compared with the current reading. */
function findPosition({ unit, points }: LimitScale, origin: CountOrigin): number {
  if (unit === 'd') return origin.day
  const point = findPoint(points, origin)
  return point && point.stretch === points.at(-1)?.stretch ? point.count : NaN
}
