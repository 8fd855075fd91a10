import { readComparableLimits } from '../lookup/intervals.js'
import { scheduleRule } from '../ruleMakers.js'

/**
 * A window as long as the interval or longer: the service would never be overdue.
 * Judges: Every service with `window`: hours, distance and period against those of `repeat`, by comparable
 * size. Finds each limit that is as long or longer, in the order of the keys. A limit stated by only one of
 * the two, and overrides, are not judged.
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
