import { comparableLimits } from '../lookup/comparableLimits.js'
import { defineRule } from '../rule.js'

/**
 * A first interval that is longer than the repeat by the same measure: the first change takes out the wear of running in,
 * so it comes early, and a later one is mostly two figures swapped. Some manuals mean it: waive it there. House rule; the
 * same length is fine.
 */
export const firstLongerThanRepeat = defineRule({
  code: 'interval/first-longer-than-repeat',
  severity: 'warning',
  about: 'spec-sheet',
  check: ({ sheet }) =>
    sheet.schedules.flatMap(({ path, intervals }) => {
      const first = comparableLimits(intervals.first)
      const repeat = comparableLimits(intervals.repeat)
      const by = (['hours', 'distance', 'period'] as const).filter(
        (limit) => (first[limit] ?? 0) > (repeat[limit] ?? Number.POSITIVE_INFINITY),
      )
      return by.length === 0 ? [] : [{ path: `${path}/first`, params: { by } }]
    }),
})
