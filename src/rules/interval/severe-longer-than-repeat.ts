import { readComparableLimits } from '../lookup/intervals.js'
import { scheduleRule } from '../ruleMakers.js'

/**
 * A severe-use interval longer than the normal one, or a factor above 1. The figures were swapped, or the
 * factor was inverted.
 * Judges: Every service with `severe`. Finds a factor above 1, and each hours, distance or period longer than
 * that of `repeat`, by comparable size. A limit stated by only one of the two, and overrides, are not judged.
 * Place: `/services/<id>/intervals/severe/factor`, or `…/severe/interval/<limit>`
 * Params: by: `factor`, or the limit that is longer: `hours`, `distance` or `period`
 * Harm: job
 * House rule. Equal lengths are allowed.
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
