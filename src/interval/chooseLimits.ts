import { type Reason, refuse } from '../base/index.js'
import { isFigure } from '../quantity/index.js'
import type { Interval, Resolved } from '../spec/index.js'
import { intervalReason } from './codes.js'
import type { DueIntervals, DueOptions } from './intervalFacts.js'
import { quantityOf } from './meterCount.js'
import { LIMITS, type Limits, readLimits } from './readLimits.js'

/** The limits of one machine. */
export interface ChosenLimits {
  /** Until the first completion: those that `first` names; the others are those of `repeat`. */
  readonly opening: Limits
  readonly repeat: Limits
  /** Absent: the window is not known; past the limit is `due`, and whether it is `overdue` cannot be determined. */
  readonly window: Limits | undefined
}

const NONE: Limits = {}
const MILLION = 1_000_000n

/**
 * Which figures count: severe use replaces the repeat limits that its interval names, or multiplies them by its factor;
 * limits that `first` does not name are those of `repeat`. Nothing where a needed interval is not known.
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
  const opening = firstNeeded && first !== undefined ? read(first, 'first') : NONE
  if (repeat && opening && severity === 'severe') {
    if (severe === undefined) {
      reasons.push(intervalReason('interval/severe-not-given', {}))
    } else if (severe.kind === 'interval') {
      const { criteria } = severe
      const limits = read(severe.interval, 'severe')
      repeat = limits && { ...repeat, ...limits }
      if (limits) reasons.push(intervalReason('interval/severe-interval-applied', { criteria }))
    } else {
      const { factor, criteria } = severe
      repeat = scaleLimits(repeat, factor, missing)
      reasons.push(intervalReason('interval/severe-factor-applied', { factor, criteria }))
    }
  }
  const isOpen = window === undefined || window.kind === 'not stated'
  const windowLimits = isOpen ? NONE : read(window, 'window')
  return repeat && opening && { opening: { ...repeat, ...opening }, repeat, window: windowLimits }
}

/** A factor times counts, half up in exact integers; a period only where whole months and whole days come out. */
function scaleLimits(limits: Limits, factor: string, missing: Reason[]): Limits {
  if (!isFigure(factor)) throw refuse('intervals.severe.factor', factor, "a decimal such as '0.5'", 'string')
  const millionths = BigInt(Math.round(Number(factor) * 1e6))
  const scaled: { -readonly [By in keyof Limits]: Limits[By] } = {}
  for (const by of LIMITS) {
    const limit = limits[by]
    if (!limit) continue
    const { asQuantity } = limit
    const months = BigInt(limit.months) * millionths
    const counts = BigInt(limit.counts) * millionths
    if (!('period' in asQuantity)) {
      const rounded = Number((counts + MILLION / 2n) / MILLION)
      const printed = quantityOf(rounded, asQuantity.unit)
      scaled[by] = { months: 0, counts: rounded, asQuantity: printed, printed }
    } else if (months % MILLION || counts % MILLION) {
      missing.push(intervalReason('interval/fractional-period', { period: asQuantity.period, factor }))
      scaled[by] = { ...limit, months: Number.NaN }
    } else {
      const whole = months / MILLION
      const days = counts / MILLION
      const period = `P${whole ? `${whole}M` : ''}${days || !whole ? `${days}D` : ''}`
      scaled[by] = { months: Number(whole), counts: Number(days), asQuantity: { period } }
    }
  }
  return scaled
}
