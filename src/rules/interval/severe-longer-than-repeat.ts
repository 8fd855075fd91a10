import { readComparableLimits } from '../lookup/readComparableLimits.js'
import { scheduleRule } from '../ruleMakers.js'

/**
 * An interval for severe use that is longer than the normal one, or a factor above 1: the two were swapped, or the
 * factor is the inverse of the right one.
 * Judges: Every service with `severe`. Finds a factor above 1. Compares hours, distance and period of an interval
 * with those of `repeat` by their comparable sizes and finds each that is longer; a limit that only one of the two
 * has is not compared. Overrides are not judged.
 * Place: `/services/<id>/intervals/severe/factor`, or `…/severe/interval/<limit>`
 * Params: by: `factor`, or the limit that is longer: `hours`, `distance` or `period`
 * Harm: job
 * House rule; the same length passes.
 */
export const rule = scheduleRule(
  'interval/severe-longer-than-repeat',
  'error',
  ({ path, intervals: { severe, repeat } }) => {
    if (severe === undefined) return []
    if (severe.kind === 'factor') {
      return Number(severe.factor) > 1 ? [{ path: `${path}/severe/factor`, params: { by: 'factor' } }] : []
    }
    const severeLimits = readComparableLimits(severe.interval)
    const normalLimits = readComparableLimits(repeat)
    return (['hours', 'distance', 'period'] as const)
      .filter((by) => (severeLimits[by] ?? 0) > (normalLimits[by] ?? Number.POSITIVE_INFINITY))
      .map((by) => ({ path: `${path}/severe/interval/${by}`, params: { by } }))
  },
)
