import type { PrintedComparison } from '../../quantity/index.js'
import { disagreementRule } from '../ruleMakers.js'

/**
 * Two printed figures of one value that cannot both be true, without a common ratio between them. One was
 * rounded wrongly or misread.
 * Judges: Every stated value, including overrides: each entry of `printed` in a unit of the same measure,
 * against the first. They agree if one true value lies in both rounding intervals (half of the last printed
 * digit; a converted limit may also be rounded inward by less than one last digit). Finds a miss of up to 5 %
 * (warning), a larger one that no known ratio explains (error), and figures of kinds that cannot be compared,
 * such as one limit against a nominal (warning). If all of two or more entries disagree with the first and
 * agree with one another, the first is wrong and gets the only finding.
 * Place: `<value>/printed/<place>`; the value itself if the first is wrong
 * Params: first: the first printed value; second: the value that disagrees; missPercent: the miss in per
 * cent, absent if it cannot be compared; how: `miss`, `differ` or `not-comparable`
 * Harm: machine
 * House rule.
 */
export const rule = disagreementRule(
  'quantity/second-unit-disagrees',
  'warning',
  ({ path, first, second, agreement }) => {
    const { verdict, reasons } = agreement
    const how = DIFFERENCE_KINDS[verdict]
    if (how === undefined) return []
    const missPercent = reasons
      .map(({ params }) => params.missPercent)
      .find((value) => typeof value === 'number')
    const params = { first, second, missPercent, how }
    return [{ path, params, ...(how === 'differ' ? { severity: 'error' as const } : {}) }]
  },
)

const DIFFERENCE_KINDS: Readonly<
  Partial<Record<PrintedComparison['verdict'], 'miss' | 'differ' | 'not-comparable'>>
> = {
  'small miss': 'miss',
  differ: 'differ',
  'not comparable': 'not-comparable',
}
