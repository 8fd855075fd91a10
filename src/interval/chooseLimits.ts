import { type Reason, refuse } from '../base/index.js'
import { isFigure } from '../quantity/index.js'
import type { Interval, Resolved } from '../spec/index.js'
import { intervalReason } from './codes.js'
import type { DueReaders } from './dueReaders.js'
import type { DueIntervals, DueOptions } from './intervalFacts.js'
import { quantityFromCounts } from './meterCount.js'
import { LIMIT_NAMES, type Limits } from './readLimits.js'

/** The limits of one machine. */
export interface ChosenLimits {
  /** Limits until the first completion: those of `first`; where it states none, those of `repeat`. */
  readonly opening: Limits
  readonly repeat: Limits
  /** Undefined if the window is not known: a service past its limit is then `due`, never `overdue`. */
  readonly window: Limits | undefined
}

const NO_LIMITS: Limits = {}
const MILLION = 1_000_000

/**
 * Chooses the limits that apply. Severe use replaces the repeat limits that its interval states, or
 * multiplies all of them by its factor. Undefined if a needed interval is not known.
 */
export function chooseLimits(
  intervals: DueIntervals,
  severity: DueOptions['severity'],
  isFirstNeeded: boolean,
  reasons: Reason[],
  missing: Reason[],
  readLimits: DueReaders['limits'],
): ChosenLimits | undefined {
  const { first, severe, window } = intervals
  const readInterval = (interval: Resolved<Interval>, intervalName: string): Limits | undefined => {
    if (interval.kind === 'stated') return readLimits(interval.value, intervalName)
    missing.push(
      interval.kind === 'not stated'
        ? intervalReason('interval/interval-not-stated', { which: intervalName })
        : intervalReason('interval/interval-depends', { which: intervalName, facts: interval.missing }),
    )
    return undefined
  }
  let repeat = readInterval(intervals.repeat, 'repeat')
  const opening = isFirstNeeded && first !== undefined ? readInterval(first, 'first') : NO_LIMITS
  if (repeat && opening && severity === 'severe') {
    if (severe === undefined) {
      reasons.push(intervalReason('interval/severe-not-given', {}))
    } else if (severe.kind === 'factor') {
      const { factor, criteria } = severe
      repeat = scaleLimits(repeat, factor, missing)
      reasons.push(intervalReason('interval/severe-factor-applied', { factor, criteria }))
    } else {
      const limits = readInterval(severe.interval, 'severe')
      repeat = limits && { ...repeat, ...limits }
      if (limits)
        reasons.push(intervalReason('interval/severe-interval-applied', { criteria: severe.criteria }))
    }
  }
  const isWindowUnknown = window === undefined || window.kind === 'not stated'
  const windowLimits = isWindowUnknown ? NO_LIMITS : readInterval(window, 'window')
  return repeat && opening && { repeat, opening: { ...repeat, ...opening }, window: windowLimits }
}

/**
 * Multiplies limits by a factor, rounding half up; a period must give whole months and days. Millions are multiplied
 * separately, so that products of a factor below 9000 are exact.
 */
export function scaleLimits(limits: Limits, factor: string, missing: Reason[]): Limits {
  if (!isFigure(factor)) throw refuse('intervals.severe.factor', factor, "a decimal such as '0.5'", 'string')
  const millionths = Math.round(Number(factor) * MILLION)
  const scaledLimits: { -readonly [By in keyof Limits]: Limits[By] } = {}
  for (const by of LIMIT_NAMES) {
    const limit = limits[by]
    if (!limit) continue
    let isWhole = true
    const multiply = (count: number): number => {
      const product = (count % MILLION) * millionths
      if (product % MILLION) isWhole = false
      return Math.floor(count / MILLION) * millionths + Math.round(product / MILLION)
    }
    const months = multiply(limit.months)
    const counts = multiply(limit.counts)
    const { asQuantity } = limit
    if (!('period' in asQuantity)) {
      const printed = quantityFromCounts(counts, asQuantity.unit)
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
