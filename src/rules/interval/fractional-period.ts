import { scanPeriod } from '../../calendar/index.js'
import { scheduleRule } from '../ruleMakers.js'

/**
 * A factor for severe use that gives a fraction of a month or a day. Half of three months has no exact date,
 * so the limit is unknown. State the interval for severe use instead.
 * Judges: Every service whose `severe` is a factor and whose stated `repeat` has a period. Multiplies the
 * factor exactly by years × 12 + months, and by weeks × 7 + days. Finds a factor if either product is not a
 * whole number. Overrides are not judged.
 * Place: `/services/<id>/intervals/severe/factor`
 * Params: period: the period as written; factor: the factor as written
 * Harm: job
 * House rule: months and days are never converted into each other.
 */
export const rule = scheduleRule(
  'interval/fractional-period',
  'error',
  ({ path, intervals: { severe, repeat } }) => {
    if (severe?.kind !== 'factor' || repeat.kind !== 'interval' || repeat.period === undefined) return []
    const period = scanPeriod(repeat.period)
    const millionths = Math.round(Number(severe.factor) * 1e6)
    if (period === undefined || Number.isNaN(millionths)) return []
    const isFractional = [period.years * 12 + period.months, period.weeks * 7 + period.days].some(
      (whole) => (BigInt(whole) * BigInt(millionths)) % 1_000_000n !== 0n,
    )
    return isFractional
      ? [{ path: `${path}/severe/factor`, params: { period: repeat.period, factor: severe.factor } }]
      : []
  },
)
