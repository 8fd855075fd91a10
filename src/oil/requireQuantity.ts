import { quoteValue } from '../base/index.js'
import { type Measure, UNITS_BY_MEASURE } from '../quantity/index.js'

/**
 * Throws where a programmer passes something that is no quantity of the measure: TypeError for the wrong shape or
 * unit, RangeError for a value outside the open range. Internal.
 */
export function requireQuantity(
  name: string,
  quantity: unknown,
  measure: Measure,
  above = -Infinity,
  least = -Infinity,
): void {
  const units: readonly string[] = UNITS_BY_MEASURE[measure]
  if (typeof quantity !== 'object' || quantity === null) {
    throw new TypeError(`${name} must be a quantity { value, unit }, got ${quoteValue(quantity)}`)
  }
  const { value, unit } = quantity as { value?: unknown; unit?: unknown }
  if (typeof unit !== 'string' || !units.includes(unit)) {
    throw new TypeError(`${name}.unit must be one of ${units.join(', ')}, got ${quoteValue(unit)}`)
  }
  if (typeof value !== 'number')
    throw new TypeError(`${name}.value must be a number, got ${quoteValue(value)}`)
  if (!Number.isFinite(value) || value <= above || value < least) {
    const low = least === -Infinity ? '' : ` and ${least} or more`
    const range = above === -Infinity ? `finite${low}` : `finite and above ${above}`
    throw new RangeError(`${name}.value must be ${range}, got ${quoteValue(value)}`)
  }
}
