import type { Unit } from './unit.js'
import { UNIT_FACTORS } from './unitFactors.js'

/**
 * Whether a text is the id of a unit that this library speaks, for code that reads documents. For what people write
 * (`ft-lb`, `½ qt`) use {@link parseQuantity}.
 *
 * @param text - any value; only the exact ids of {@link UNITS_BY_MEASURE} are units
 * @returns true for a unit id
 *
 * Source: house rule, one spelling for each unit in documents.
 *
 * @example
 * ```ts
 * import { isUnit } from 'drivetrain-service/v1/quantity'
 * // Is `ft-lb` a unit id?
 * isUnit('ft-lb') // => false
 * ```
 */
export function isUnit(text: unknown): text is Unit {
  return typeof text === 'string' && Object.hasOwn(UNIT_FACTORS, text)
}
