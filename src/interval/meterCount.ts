export type MeterUnit = 'h' | 'km' | 'mi'

/**
 * What one unit of a limit is in counts: days whole, hours in 1/1000 h, distances in µm. The international mile is 1609.344 m.
 * NaN for any other unit. Asked a dozen times a question, so it looks nothing up.
 */
export function countsPer(unit: MeterUnit | 'd'): number {
  if (unit === 'h') return 1000
  if (unit === 'km') return 1_000_000_000
  if (unit === 'mi') return 1_609_344_000
  return unit === 'd' ? 1 : Number.NaN
}

/** The largest meter value, in counts: 1,000,000,000 h; 9,000,000 km, which is still a safe integer of µm. */
export const LARGEST_COUNT = { hours: 1_000_000_000_000, distance: 9_000_000_000_000_000 } as const

/** The most that a machine of this kind can add in a day, in counts: 24 h; 2,400 km (house rule: 100 km/h all day). */
export const MOST_A_DAY = { hours: 24_000, distance: 2_400_000_000_000 } as const

/**
 * A meter value as a whole number of counts, rounded half up, since 256.4 − 6.4 ≥ 250 is false in binary fractions but
 * 256400 − 6400 ≥ 250000 is true. NaN stays NaN. Decimals come out exact
 * to 1/1000 h, and to 1 µm up to 4,000,000 km; past that a double itself is coarser than 1 µm. The SQL and the columns round in the same way.
 */
export function meterCount(value: number, unit: MeterUnit): number {
  const counts = value * countsPer(unit)
  const whole = Math.floor(counts)
  return counts - whole >= 0.5 ? whole + 1 : whole
}

/** Counts as a quantity. */
export function quantityOf<U extends MeterUnit | 'd'>(counts: number, unit: U): { value: number; unit: U } {
  return { value: counts / countsPer(unit), unit }
}
