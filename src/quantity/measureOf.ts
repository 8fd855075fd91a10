import { quoteValue } from '../base/index.js'
import { type Measure, UNIT_FACTORS, type Unit } from './unit.js'
import { FACTORS_BY_MEASURE } from './unitFactors.js'

/** The measure of a unit, for code that must not mix torque with energy, or a temperature with a difference. */
export function measureOf(unit: Unit): Measure {
  for (const [measure, factors] of Object.entries(FACTORS_BY_MEASURE))
    if (typeof unit === 'string' && Object.hasOwn(factors, unit)) return measure as Measure
  throw new TypeError(`unit must be a unit id such as 'N.m', got ${quoteValue(unit)}`)
}

/**
 * Whether a text is a unit id of this library, for code that reads documents. To read other spellings
 * (`ft-lb`, `½ qt`), use {@link parseQuantity}.
 */
export function isUnit(text: unknown): text is Unit {
  return typeof text === 'string' && Object.hasOwn(UNIT_FACTORS, text)
}

/** The unit of a difference between two values: 1 °C of difference is 1.8 °F of difference. */
export function findDifferenceUnit(unit: Unit): Unit {
  if (unit === 'degC') return 'degC_diff'
  if (unit === 'degF') return 'degF_diff'
  return unit === 'K' ? 'K_diff' : unit
}
