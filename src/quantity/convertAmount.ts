import { exactIn, findNearestQuantity } from './exactIn.js'
import type { PrintedQuantity, Quantity, Unit } from './unit.js'

/**
 * Converts an amount of a document (figure or JSON number): 1.001 L is 1001 mL. It accepts every amount of a
 * document; {@link convert} uses the binary value of a number, and throws below the normal doubles.
 */
export function convertAmount<U extends Unit>(amount: Quantity | PrintedQuantity, unit: U): Quantity<U> {
  return findNearestQuantity(exactIn(amount, unit), unit, unit)
}
