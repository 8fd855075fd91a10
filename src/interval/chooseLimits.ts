import { type Reason, refuse } from '../base/index.js'
import { isFigure } from '../quantity/index.js'
import type { Interval, Resolved } from '../spec/index.js'
import { intervalReason } from './codes.js'
import type { DueIntervals, DueOptions } from './intervalFacts.js'
import { quantityOf } from './meterCount.js'
import { LIMITS, type Limits, readLimits } from './readLimits.js'

/** The limits of one machine. */
export interface ChosenLimits {
  /** Limits until the first completion: those of `first`, and those of `repeat` that it does not name. */
  readonly opening: Limits
  readonly repeat: Limits
  /** Undefined: the window is not known, so past the limit the service is `due`, never `overdue`. */
  readonly window: Limits | undefined
}

const NO_LIMITS: Limits = {}
const MILLION = 1_000_000

/**
 * Chooses the limits that count. Severe use replaces the repeat limits that its interval names, or multiplies all of them by
 * its factor. Undefined if a needed interval is not known.
 */
export function chooseLimits(
  intervals: DueIntervals,
  severity: DueOptions['severity'],
  firstNeeded: boolean,
  reasons: Reason[],
  missing: Reason[],
): ChosenLimits | undefined {
  const { first, severe, window } = intervals
  const read = (interval: Resolved<Interval>, which: string): Limits | undefined => {
    if (interval.kind === 'stated') return readLimits(interval.value, which)
    missing.push(
      interval.kind === 'not stated'
        ? intervalReason('interval/interval-not-stated', { which })
        : intervalReason('interval/interval-depends', { which, facts: interval.missing }),
    )
    return undefined
  }
  let repeat = read(intervals.repeat, 'repeat')
  const opening = firstNeeded && first !== undefined ? read(first, 'first') : NO_LIMITS
  if (repeat && opening && severity === 'severe') {
    if (severe === undefined) {
      reasons.push(intervalReason('interval/severe-not-given', {}))
    } else if (severe.kind === 'factor') {
      const { factor, criteria } = severe
      repeat = scaleLimits(repeat, factor, missing)
      reasons.push(intervalReason('interval/severe-factor-applied', { factor, criteria }))
    } else {
      const limits = read(severe.interval, 'severe')
      repeat = limits && { ...repeat, ...limits }
      if (limits)
        reasons.push(intervalReason('interval/severe-interval-applied', { criteria: severe.criteria }))
    }
  }
  const isOpen = window === undefined || window.kind === 'not stated'
  const allowed = isOpen ? NO_LIMITS : read(window, 'window')
  return repeat && opening && { repeat, opening: { ...repeat, ...opening }, window: allowed }
}

/**
 * Multiplies limits by a factor, rounding half up; a period must give whole months and days. Millions are multiplied
 * separately, so that products of a factor below 9000 are exact.
 */
function scaleLimits(limits: Limits, factor: string, missing: Reason[]): Limits {
  if (!isFigure(factor)) throw refuse('intervals.severe.factor', factor, "a decimal such as '0.5'", 'string')
  const millionths = Math.round(Number(factor) * MILLION)
  const scaledLimits: { -readonly [By in keyof Limits]: Limits[By] } = {}
  for (const by of LIMITS) {
    const limit = limits[by]
    if (!limit) continue
    let isWhole = true
    const times = (count: number): number => {
      const product = (count % MILLION) * millionths
      if (product % MILLION) isWhole = false
      return Math.floor(count / MILLION) * millionths + Math.round(product / MILLION)
    }
    const months = times(limit.months)
    const counts = times(limit.counts)
    const { asQuantity } = limit
    if (!('period' in asQuantity)) {
      const printed = quantityOf(counts, asQuantity.unit)
      scaledLimits[by] = { months, counts, asQuantity: printed, printed }
    } else if (isWhole) {
      const period = `P${months ? `${months}M` : ''}${counts || !months ? `${counts}D` : ''}`
      scaledLimits[by] = { months, counts, asQuantity: { period } }
    } else {
      missing.push(intervalReason('interval/fractional-period', { period: asQuantity.period, factor }))
      scaledLimits[by] = { ...limit, months: NaN }
    }
  }
  return scaledLimits
}
