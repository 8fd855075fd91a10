import { readComparableLimits } from '../lookup/readComparableLimits.js'
import { scheduleRule } from '../ruleMakers.js'

/**
 * A window as long as the interval or longer: the service could be omitted without ever being overdue.
 * Judges: Every service with `window`: compares hours, distance and period with those of `repeat` by their comparable
 * sizes. Finds each limit that is as long or longer; a limit that only one of the two has is not compared. Overrides
 * are not judged. Several limits of one window are found in the order of its keys.
 * Place: `/services/<id>/intervals/window/<limit>`
 * Params: by: `hours`, `distance` or `period`
 * Harm: job
 * House rule.
 */
export const rule = scheduleRule('interval/window-not-below-repeat', 'error', ({ path, intervals }) => {
  const window = readComparableLimits(intervals.window)
  const repeat = readComparableLimits(intervals.repeat)
  return (['hours', 'distance', 'period'] as const)
    .filter((by) => (window[by] ?? -1) >= (repeat[by] ?? Number.POSITIVE_INFINITY))
    .map((by) => ({ path: `${path}/window/${by}`, params: { by } }))
})
