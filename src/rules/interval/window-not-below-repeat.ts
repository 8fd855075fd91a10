import { comparableLimits } from '../lookup/comparableLimits.js'
import { defineRule } from '../rule.js'

/**
 * A window as long as the interval or longer: the service could be left out altogether and never be overdue. House rule.
 */
export const windowNotBelowRepeat = defineRule({
  code: 'interval/window-not-below-repeat',
  severity: 'error',
  about: 'spec-sheet',
  check: ({ sheet }) =>
    sheet.schedules.flatMap(({ path, intervals }) => {
      const window = comparableLimits(intervals.window)
      const repeat = comparableLimits(intervals.repeat)
      return (['hours', 'distance', 'period'] as const)
        .filter((by) => (window[by] ?? -1) >= (repeat[by] ?? Number.POSITIVE_INFINITY))
        .map((by) => ({ path: `${path}/window/${by}`, params: { by } }))
    }),
})
