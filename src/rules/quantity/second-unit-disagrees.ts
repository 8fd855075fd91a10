import type { PrintedAgreement } from '../../quantity/index.js'
import { defineRule } from '../rule.js'

/**
 * Two printed figures of one value that cannot both be true, by no ratio that gives the slip away: rounded
 * wrongly, or misread. A warning up to 5 %, an error beyond, since one of the two would do harm. Figures that
 * cannot be compared at all, such as one limit against a nominal, are a warning too. House rule: figures
 * agree when one true value lies in the rounding interval of each.
 */
export const secondUnitDisagrees = defineRule({
  code: 'quantity/second-unit-disagrees',
  severity: 'warning',
  about: 'spec-sheet',
  check: ({ sheet }) =>
    sheet.disagreements.flatMap(({ path, first, second, agreement }) => {
      const { verdict, reasons } = agreement
      const how = HOW[verdict]
      if (how === undefined) return []
      const missPercent = reasons
        .map(({ params }) => params.missPercent)
        .find((one) => typeof one === 'number')
      const params = { first, second, missPercent, how }
      return [{ path, params, ...(how === 'differ' ? { severity: 'error' as const } : {}) }]
    }),
})

const HOW: Readonly<Partial<Record<PrintedAgreement['verdict'], 'miss' | 'differ' | 'not-comparable'>>> = {
  'small miss': 'miss',
  differ: 'differ',
  'not comparable': 'not-comparable',
}
