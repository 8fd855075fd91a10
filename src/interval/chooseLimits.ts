import type { Reason } from '../base/index.js'
import type { Interval, Resolved } from '../spec/index.js'
import type { DueIntervals, DueOptions } from './dueQuestion.js'
import { type Limits, readLimits } from './readLimits.js'
import { scaleLimits } from './scaleLimits.js'

/** The limits that hold for one machine. */
export interface ChosenLimits {
  /** Until the first completion: those that `first` names, and the repeat's for the others. */
  readonly opening: Limits
  readonly repeat: Limits
  /** Absent: the window is not known; past the limit is `due`, and nobody can say whether it is `overdue`. */
  readonly window: Limits | undefined
}

const NONE: Limits = {}

/**
 * Settles which figures count: severe use replaces the repeat limits that its interval names, or multiplies them by its
 * factor; limits that `first` does not name stay the repeat's. Nothing where a needed interval is not known.
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
          reasons.push({ code: 'interval/severe-interval-taken', params: { criteria } })
      } else {
        const { factor } = severe
        repeat = scaleLimits(repeat, factor, missing)
        reasons.push({ code: 'interval/severe-factor-taken', params: { factor, criteria } })
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
