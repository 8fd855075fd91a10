import { readComparableLimits } from '../lookup/readComparableLimits.js'
import { scheduleRule } from '../ruleMakers.js'

/**
 * A first interval that is longer than the repeat interval by the same measure: the first change takes out the wear
 * of running in, so it comes early; if it comes later, the two figures were probably swapped. Waive it if the manual
 * really says so.
 * Judges: Every service with `first`: compares hours, distance and period of `first` with those of `repeat`, each by
 * its comparable size. Finds a `first` with a longer limit; a limit that only one of the two has is not compared. One
 * finding for each service. Overrides are not judged.
 * Place: `/services/<id>/intervals/first`
 * Params: by: the longer limits of `hours`, `distance`, `period` in this order
 * Harm: job
 * House rule; the same length passes.
 */
export const rule = scheduleRule('interval/first-longer-than-repeat', 'warning', ({ path, intervals }) => {
  const first = readComparableLimits(intervals.first)
  const repeat = readComparableLimits(intervals.repeat)
  const by = (['hours', 'distance', 'period'] as const).filter(
    (limit) => (first[limit] ?? 0) > (repeat[limit] ?? Number.POSITIVE_INFINITY),
  )
  return by.length === 0 ? [] : [{ path: `${path}/first`, params: { by } }]
})
