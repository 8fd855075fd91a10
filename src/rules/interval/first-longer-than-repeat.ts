import { readComparableLimits } from '../lookup/intervals.js'
import { scheduleRule } from '../ruleMakers.js'

/**
 * A first interval longer than the repeat interval in hours, distance or time. The first change removes the
 * wear of running in, so it comes early; the figures were probably swapped. Waive the finding if the manual
 * really says so.
 * Judges: Every service with `first`: hours, distance and period of `first` against those of `repeat`, by
 * comparable size. Finds a `first` with a longer limit, once for each service. A limit stated by only one of
 * the two, and overrides, are not judged.
 * Place: `/services/<id>/intervals/first`
 * Params: by: the longer limits of `hours`, `distance`, `period` in this order
 * Harm: job
 * House rule. Equal lengths are allowed.
 */
export const rule = scheduleRule('interval/first-longer-than-repeat', 'warning', ({ path, intervals }) => {
  const first = readComparableLimits(intervals.first)
  const repeat = readComparableLimits(intervals.repeat)
  const by = (['hours', 'distance', 'period'] as const).filter(
    (limit) => (first[limit] ?? 0) > (repeat[limit] ?? Number.POSITIVE_INFINITY),
  )
  return by.length === 0 ? [] : [{ path: `${path}/first`, params: { by } }]
})
