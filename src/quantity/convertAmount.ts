import { exactIn, nearestQuantity } from './exactIn.js'
import type { PrintedQuantity, Quantity, Unit } from './unit.js'

/**
 * A written amount, figure or JSON number, in another unit: 1.001 L is 1001 mL. Whatever a document may hold has an
 * answer; {@link convert} takes a number at its binary value instead, and throws below the normal doubles.
 */
export function convertAmount<U extends Unit>(amount: Quantity | PrintedQuantity, unit: U): Quantity<U> {
  return nearestQuantity(exactIn(amount, unit), unit, unit)
}
