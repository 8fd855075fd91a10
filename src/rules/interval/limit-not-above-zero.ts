import { comparableLimits } from '../lookup/comparableLimits.js'
import { defineRule } from '../rule.js'

/**
 * An interval of zero hours, distance or time: the service would be due again as soon as it is done.
 * Judges: Every stated interval, overrides included, but for those of a `window`, which may be zero. Finds each of
 * hours, distance and period that is zero.
 * Place: `<interval>/<limit>`
 * Params: by: `hours`, `distance` or `period`
 * House rule.
 */
export const limitNotAboveZero = defineRule({
  code: 'interval/limit-not-above-zero',
  severity: 'error',
  about: 'spec-sheet',
  check: ({ sheet }) =>
    sheet.intervals.flatMap(({ interval, path, place }) => {
      if (place.endsWith('/window')) return []
      const limits = comparableLimits(interval)
      return (['hours', 'distance', 'period'] as const)
        .filter((by) => limits[by] === 0)
        .map((by) => ({ path: `${path}/${by}`, params: { by } }))
    }),
})
