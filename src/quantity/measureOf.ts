import { quoteValue } from '../base/index.js'
import { type Measure, UNITS_BY_MEASURE, type Unit } from './unit.js'

/** What a unit measures, for code that must not mix torque with energy or a temperature with a difference. */
export function measureOf(unit: Unit): Measure {
  for (const [measure, units] of Object.entries(UNITS_BY_MEASURE)) {
    if ((units as readonly string[]).includes(unit)) return measure as Measure
  }
  throw new TypeError(`unit must be a unit id such as 'N.m', got ${quoteValue(unit)}`)
}
