import { type Limits, readLimits } from '../../interval/index.js'
import { compareExact, type DistanceUnit, exactOf, type PrintedQuantity } from '../../quantity/index.js'
import type { Interval } from '../../spec/index.js'

interface ComparableLimits {
  readonly hours?: number
  readonly distance?: number
  /** In days, with months of 365.25 / 12 days. Use it only to compare two periods. */
  readonly period?: number
}

/**
 * The limits of an interval as comparable numbers. Hours up to 12 are left out: `spec/period-as-hours`
 * reports them.
 */
export function readComparableLimits(interval: Interval | undefined): ComparableLimits {
  const limits = interval?.kind === 'interval' ? tryReadLimits(interval) : undefined
  if (limits === undefined) return {}
  const { hours, distance, period } = limits
  return {
    ...(hours && !(hours.counts > 0 && hours.counts <= 12_000) && { hours: hours.counts / 1000 }),
    ...(distance && { distance: distance.counts / 1e9 }),
    ...(period && { period: period.months * (365.25 / 12) + period.counts }),
  }
}

function tryReadLimits(interval: Extract<Interval, { kind: 'interval' }>): Limits | undefined {
  try {
    return readLimits(interval, 'interval')
  } catch {
    return undefined
  }
}

/** Whether one distance is in miles and the other in km, and the number of miles is larger. */
export function isConvertedWrongWay(
  first: PrintedQuantity<DistanceUnit>,
  second: PrintedQuantity<DistanceUnit>,
): boolean {
  if (first.unit === second.unit) return false
  const [miles, kilometres] = first.unit === 'mi' ? [first, second] : [second, first]
  return compareExact(exactOf(miles.value), exactOf(kilometres.value)) > 0
}

const HOURS_PER_MONTH = [720, 730, 730.5, 732, 744]
const MONTHS = [1, 2, 3, 4, 6, 9, 12, 18, 24, 36, 48, 60]

/** The smallest number of calendar months equal to these hours. */
export const findCalendarMonths = (hours: number): number | undefined =>
  MONTHS.find((count) => HOURS_PER_MONTH.some((month) => hours === count * month))
