import type { NumberRange } from '../base/index.js'
import { type Measure, requireQuantity } from '../quantity/index.js'

/** Far beyond every sum of a document's numbers, in any unit; every calculation with it ends. */
const MAX_AMOUNT = 1e15

/** Throws for anything that is not an amount of the measure, from 0 where no other range is given. */
export function requireAmount(
  name: string,
  amount: unknown,
  measure: Measure,
  range: NumberRange & { readonly figure?: true } = {},
): void {
  requireQuantity(name, amount, measure, { min: 0, max: MAX_AMOUNT, ...range })
}
