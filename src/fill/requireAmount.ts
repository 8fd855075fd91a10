import type { NumberRange } from '../base/index.js'
import { type Measure, requireQuantity } from '../quantity/index.js'

/** More than any sum of a document's numbers, in any unit. */
const MAX_AMOUNT = 1e15

/** Throws if the argument is not an amount of the measure in the range; without a range, from 0. */
export function requireAmount(
  name: string,
  amount: unknown,
  measure: Measure,
  range: NumberRange & { readonly figure?: true } = {},
): void {
  requireQuantity(name, amount, measure, { min: 0, max: MAX_AMOUNT, ...range })
}
