import type { Reason } from '../finding.js'
import type { Interval } from '../spec/leaf.js'
import type { Resolved } from '../spec/resolved.js'
import type { DueIntervals } from './dueQuestion.js'
import { COUNTS_PER_UNIT } from './meterCount.js'
import { type Limits, type MeterLimit, type PeriodLimit, readLimits } from './readLimits.js'

/** The limits that hold for one machine: `first` until the first completion, `repeat` after it. */
export interface ChosenLimits {
  /** Absent: the manual names no first service, or none is needed any more. */
  readonly first?: Limits | undefined
  readonly repeat: Limits
  readonly window: Limits
  /** The window is not known: past the limit is `due`, and nobody can say whether it is `overdue`. */
  readonly windowKnown: boolean
}

const NONE: Limits = {}

/**
 * Settles which figures count: severe use replaces the repeat limits that its interval names, or multiplies them by its
 * factor; limits that `first` does not name stay the repeat's. Nothing where a needed interval is not known.
 */
export function chooseLimits(
  intervals: DueIntervals,
  severity: 'normal' | 'severe',
  firstNeeded: boolean,
  reasons: Reason[],
  missing: Reason[],
): ChosenLimits | undefined {
  const { severe } = intervals
  let repeat = limitsOf(intervals.repeat, 'repeat', missing)
  let first: Limits | undefined
  if (firstNeeded && intervals.first !== undefined) {
    first = limitsOf(intervals.first, 'first', missing)
    if (first === undefined) repeat = undefined
  }
  if (repeat !== undefined && severity === 'severe') {
    if (severe === undefined) {
      reasons.push({ code: 'interval/severe-not-given', params: {} })
    } else if (severe.kind === 'interval') {
      const limits = limitsOf(severe.interval, 'severe', missing)
      if (limits === undefined) repeat = undefined
      else {
        repeat = mergeLimits(limits, repeat)
        reasons.push({ code: 'interval/severe-interval-taken', params: { criteria: severe.criteria } })
      }
    } else {
      repeat = scaleLimits(repeat, severe.factor, missing)
      reasons.push({
        code: 'interval/severe-factor-taken',
        params: { factor: severe.factor, criteria: severe.criteria },
      })
    }
  }
  const window = intervals.window
  const windowLimits = window?.kind === 'stated' ? readLimits(window.value, 'intervals.window') : undefined
  const windowKnown = window?.kind !== 'cannot tell'
  if (!windowKnown) limitsOf(window, 'window', missing)
  if (repeat === undefined) return undefined
  return { first: first && mergeLimits(first, repeat), repeat, window: windowLimits ?? NONE, windowKnown }
}

function limitsOf(interval: Resolved<Interval>, which: string, missing: Reason[]): Limits | undefined {
  if (interval.kind === 'stated') return readLimits(interval.value, `intervals.${which}`)
  if (interval.kind === 'not stated')
    missing.push({ code: 'interval/interval-not-stated', params: { which } })
  else missing.push({ code: 'interval/interval-depends', params: { which, facts: interval.missing } })
  return undefined
}

function mergeLimits(named: Limits, others: Limits): Limits {
  return {
    hours: named.hours ?? others.hours,
    distance: named.distance ?? others.distance,
    period: named.period ?? others.period,
  }
}

/** A factor times counts, half up in exact integers; a period only where whole months and whole days come out. */
function scaleLimits(limits: Limits, factor: string, missing: Reason[]): Limits {
  if (!/^[0-9]{1,9}(\.[0-9]{1,6})?$/.test(factor)) {
    throw new RangeError(
      `intervals.severe.factor is ${JSON.stringify(factor)}; it must be a decimal such as "0.5"`,
    )
  }
  const millionths = BigInt(Math.round(Number(factor) * 1e6))
  const scaleMeter = (limit: MeterLimit | undefined): MeterLimit | undefined => {
    if (limit === undefined) return undefined
    const counts = Number((BigInt(limit.counts) * millionths + 500_000n) / 1_000_000n)
    return {
      counts,
      printed: { value: counts / COUNTS_PER_UNIT[limit.printed.unit], unit: limit.printed.unit },
    }
  }
  const scalePeriod = (limit: PeriodLimit | undefined): PeriodLimit | undefined => {
    if (limit === undefined) return undefined
    const months = BigInt(limit.months) * millionths
    const days = BigInt(limit.days) * millionths
    if (months % 1_000_000n !== 0n || days % 1_000_000n !== 0n) {
      missing.push({ code: 'interval/factor-leaves-part', params: { period: limit.printed, factor } })
      return { months: Number.NaN, days: Number.NaN, printed: limit.printed }
    }
    const whole = { months: Number(months / 1_000_000n), days: Number(days / 1_000_000n) }
    const printed = `P${whole.months > 0 ? `${whole.months}M` : ''}${whole.days > 0 || whole.months === 0 ? `${whole.days}D` : ''}`
    return { ...whole, printed }
  }
  return {
    hours: scaleMeter(limits.hours),
    distance: scaleMeter(limits.distance),
    period: scalePeriod(limits.period),
  }
}
