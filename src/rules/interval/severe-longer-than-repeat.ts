import { comparableLimits } from '../lookup/comparableLimits.js'
import { defineRule } from '../rule.js'

/**
 * Severe use with a longer interval than normal use, or with a factor above 1: the two were swapped, or the factor was turned
 * upside down. House rule; the same length is fine.
 */
export const severeLongerThanRepeat = defineRule({
  code: 'interval/severe-longer-than-repeat',
  severity: 'error',
  about: 'spec-sheet',
  check: ({ sheet }) =>
    sheet.schedules.flatMap(({ path, intervals: { severe, repeat } }) => {
      if (severe === undefined) return []
      if (severe.kind === 'factor') {
        return Number(severe.factor) > 1 ? [{ path: `${path}/severe/factor`, params: { by: 'factor' } }] : []
      }
      const longer = comparableLimits(severe.interval)
      const normal = comparableLimits(repeat)
      return (['hours', 'distance', 'period'] as const)
        .filter((by) => (longer[by] ?? 0) > (normal[by] ?? Number.POSITIVE_INFINITY))
        .map((by) => ({ path: `${path}/severe/interval/${by}`, params: { by } }))
    }),
})
