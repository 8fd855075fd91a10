import { quoteValue, requireObject } from '../base/index.js'
import { findConversionStep } from './conversionStep.js'
import { convertValue } from './convertValue.js'
import type { Quantity, Unit } from './unit.js'

/**
 * Converts a measured or computed quantity to another unit of its measure, for calculations. To print a second figure next
 * to a manual's figure use {@link secondUnit}.
 *
 * to = from × ratio (temperatures: × ratio + offset), with the exact ratio, rounded once.
 *
 * @param quantity - `value`: any finite number, used at its exact binary value; `unit`: a unit id
 * @param unit - a unit of the same measure
 * @returns the double nearest to the exact result, ties to even, and its unit
 * @throws TypeError for a value that is not a number, an unknown unit, or a unit of another measure
 * @throws RangeError for NaN and infinities, and if a non-zero result is outside the normal doubles
 *   (2.2250738585072014e-308 … 1.7976931348623157e308)
 *
 * Source: factors from the statutory definitions (see `UNIT_CODES`). Nearest double, ties to even, as IEEE 754 rounds.
 *
 * @example
 * ```ts
 * import { convert } from 'drivetrain-service/v1/quantity'
 * // How much is 20 lbf·ft in newton metres?
 * convert({ value: 20, unit: 'lbf.ft' }, 'N.m').value // => 27.11635896662801
 * ```
 */
export function convert<U extends Unit>(quantity: Quantity, unit: U): Quantity<U> {
  requireObject('quantity', quantity)
  const { value } = quantity
  if (typeof value !== 'number') throw new TypeError(`value must be a number, got ${quoteValue(value)}`)
  if (!Number.isFinite(value)) throw new RangeError(`value must be finite, got ${value}`)
  return { value: convertValue(value, findConversionStep(quantity.unit, unit)), unit }
}
