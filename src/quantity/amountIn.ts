import { convert } from './convert.js'
import type { Quantity, Unit } from './unit.js'

/** Below this a document's number is nothing, in any unit; `convert` would refuse to go below the smallest double. */
const NOTHING = 1e-200

/** A document's amount in another unit: whatever a document may hold has an answer. Internal. */
export function amountIn<U extends Unit>(quantity: Quantity, unit: U): Quantity<U> {
  return typeof quantity.value === 'number' && Math.abs(quantity.value) < NOTHING
    ? { value: 0, unit }
    : convert(quantity, unit)
}
