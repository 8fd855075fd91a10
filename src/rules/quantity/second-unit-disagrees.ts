import { defineRule } from '../rule.js'
import { disagreeingFigures } from '../walk/disagreeingFigures.js'

/**
 * Two printed figures of one value that cannot both be true, by no ratio that gives the slip away: rounded wrongly,
 * or misread. A warning up to 5 %, an error beyond, since one of the two would do harm. Figures that cannot be compared at
 * all, such as one limit against a nominal, are a warning too. House rule: figures agree when one true value lies in the rounding interval of each.
 */
export const secondUnitDisagrees = defineRule({
  code: 'quantity/second-unit-disagrees',
  severity: 'warning',
  about: 'spec-sheet',
  check: (sheet) =>
    disagreeingFigures(sheet).flatMap(({ path, first, second, agreement }) => {
      const { verdict, reasons } = agreement
      if (verdict === 'slip') return []
      const missPercent = reasons
        .map(({ params }) => params.missPercent)
        .find((miss) => typeof miss === 'number')
      const params = { first, second, missPercent }
      return [{ path, params, ...(verdict === 'differ' ? { severity: 'error' as const } : {}) }]
    }),
})
