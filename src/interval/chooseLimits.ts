import { type Reason, refuse } from '../base/index.js'
import { isFigure } from '../quantity/index.js'
import type { Interval, Resolved } from '../spec/index.js'
import type { DueIntervals, DueOptions } from './intervalFacts.js'
import { quantityOf } from './meterCount.js'
import { type Limits, readLimits } from './readLimits.js'

/** The limits of one machine. */
export interface ChosenLimits {
  /** Until the first completion: those that `first` names, and the repeat's for the others. */
  readonly opening: Limits
  readonly repeat: Limits
  /** Absent: the window is not known; past the limit is `due`, and whether it is `overdue` cannot be determined. */
  readonly window: Limits | undefined
}

const NONE: Limits = {}
const MILLION = 1_000_000n

/**
 * Which figures count: severe use replaces the repeat limits that its interval names, or multiplies them by its factor;
 * limits that `first` does not name stay the repeat's. Nothing where a needed interval is not known.
 */
export function chooseLimits(
  intervals: DueIntervals,
  severity: DueOptions['severity'],
  firstNeeded: boolean,
  reasons: Reason[],
  missing: Reason[],
): ChosenLimits | undefined {
  const { severe, window } = intervals
  let repeat = limitsOf(intervals.repeat, 'repeat', missing)
  let first: Limits | undefined = NONE
  if (firstNeeded && intervals.first !== undefined) first = limitsOf(intervals.first, 'first', missing)
  if (repeat !== undefined && first !== undefined && severity === 'severe') {
    if (severe === undefined) {
      reasons.push({ code: 'interval/severe-not-given', params: {} })
    } else {
      const { criteria } = severe
      if (severe.kind === 'interval') {
        const limits = limitsOf(severe.interval, 'severe', missing)
        repeat = limits && { ...repeat, ...limits }
        if (limits !== undefined)
          reasons.push({ code: 'interval/severe-interval-applied', params: { criteria } })
      } else {
        const { factor } = severe
        repeat = scaleLimits(repeat, factor, missing)
        reasons.push({ code: 'interval/severe-factor-applied', params: { factor, criteria } })
      }
    }
  }
  const windowLimits =
    window === undefined || window.kind === 'not stated' ? NONE : limitsOf(window, 'window', missing)
  return (
    repeat &&
    first && { opening: first === NONE ? repeat : { ...repeat, ...first }, repeat, window: windowLimits }
  )
}

function limitsOf(interval: Resolved<Interval>, which: string, missing: Reason[]): Limits | undefined {
  if (interval.kind === 'stated') return readLimits(interval.value, which)
  if (interval.kind === 'not stated')
    missing.push({ code: 'interval/interval-not-stated', params: { which } })
  else missing.push({ code: 'interval/interval-depends', params: { which, facts: interval.missing } })
  return undefined
}

/** A factor times counts, half up in exact integers; a period only where whole months and whole days come out. */
function scaleLimits(limits: Limits, factor: string, missing: Reason[]): Limits {
  if (!isFigure(factor)) throw refuse('intervals.severe.factor', factor, "a decimal such as '0.5'", 'string')
  const millionths = BigInt(Math.round(Number(factor) * 1e6))
  const scaled: { -readonly [By in keyof Limits]: Limits[By] } = {}
  for (const by of ['hours', 'distance', 'period'] as const) {
    const limit = limits[by]
    if (limit === undefined) continue
    const { asQuantity } = limit
    const months = BigInt(limit.months) * millionths
    const counts = BigInt(limit.counts) * millionths
    if (!('period' in asQuantity)) {
      const rounded = Number((counts + MILLION / 2n) / MILLION)
      const quantity = quantityOf(rounded, asQuantity.unit)
      scaled[by] = { months: 0, counts: rounded, asQuantity: quantity, printed: quantity }
    } else if (months % MILLION || counts % MILLION) {
      missing.push({ code: 'interval/fractional-period', params: { period: asQuantity.period, factor } })
      scaled[by] = { ...limit, months: Number.NaN }
    } else {
      const wholeMonths = Number(months / MILLION)
      const days = Number(counts / MILLION)
      const period = `P${wholeMonths > 0 ? `${wholeMonths}M` : ''}${days > 0 || wholeMonths === 0 ? `${days}D` : ''}`
      scaled[by] = { months: wholeMonths, counts: days, asQuantity: { period } }
    }
  }
  return scaled
}
