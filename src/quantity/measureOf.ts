import { quoteValue } from '../base/index.js'
import type { Measure, Unit } from './unit.js'
import { FACTORS_BY_MEASURE } from './unitFactors.js'

/** The measure of a unit, for code that must not mix torque with energy, or a temperature with a difference. */
export function measureOf(unit: Unit): Measure {
  for (const [measure, factors] of Object.entries(FACTORS_BY_MEASURE))
    if (typeof unit === 'string' && Object.hasOwn(factors, unit)) return measure as Measure
  throw new TypeError(`unit must be a unit id such as 'N.m', got ${quoteValue(unit)}`)
}
