export type MeterUnit = 'h' | 'km' | 'mi'

/**
 * The counts in one unit of a limit: whole days, 1/1000 h, or µm. The international mile is 1609.344 m. NaN for any other unit.
 * Hot path: no lookup.
 */
export function countsPerUnit(unit: MeterUnit | 'd'): number {
  if (unit === 'h') return 1000
  if (unit === 'km') return 1_000_000_000
  if (unit === 'mi') return 1_609_344_000
  return unit === 'd' ? 1 : NaN
}

/** Maximum meter value, in counts: 1,000,000,000 h; 9,000,000 km, which is still a safe integer of µm. */
export const MAX_METER_COUNT = { hours: 1_000_000_000_000, distance: 9_000_000_000_000_000 } as const

/** The maximum that a machine of this kind can add in a day, in counts: 24 h; 2,400 km (house rule: 100 km/h all day). */
export const MAX_PER_DAY = { hours: 24_000, distance: 2_400_000_000_000 } as const

/** Maximum relative error of a product of hours: two roundings of a double. */
export const PRODUCT_ERROR = 2 ** -51

/**
 * A meter value as a whole number of counts, its decimal rounded half up, since 256.4 − 6.4 ≥ 250 is false in binary
 * fractions but 256400 − 6400 ≥ 250000 is true. NaN stays NaN. Hours with up to six decimals are exact (0.5005 × 1000 is
 * 500.49999999999994 in doubles); distances are exact to 1 µm up to 4,000,000 km, beyond which a double is coarser. The SQL
 * does the same operations.
 */
export function meterCount(value: number, unit: MeterUnit): number {
  const counts = value * countsPerUnit(unit)
  const whole = Math.floor(counts)
  const half = unit === 'h' ? 0.5 - counts * PRODUCT_ERROR : 0.5
  return counts - whole >= half ? whole + 1 : whole
}

/** A fraction of a limit in whole counts, rounded up. The last factor removes the error of the product: 0.07 of 100 is 7. */
export function fractionOfCounts(counts: number, fraction: number): number {
  return Math.ceil(counts * fraction * ROUNDING_FACTOR)
}

export const ROUNDING_FACTOR = 0.999_999_999_999_999

/** Converts counts to a quantity. */
export function quantityFromCounts<U extends MeterUnit | 'd'>(
  counts: number,
  unit: U,
): { value: number; unit: U } {
  return { value: counts / countsPerUnit(unit), unit }
}
