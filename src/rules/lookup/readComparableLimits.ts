import { type Limits, readLimits } from '../../interval/index.js'
import type { Interval } from '../../spec/index.js'

export interface ComparableLimits {
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
