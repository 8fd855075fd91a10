import { scanPeriod } from '../../calendar/index.js'
import { intervalRule } from '../ruleMakers.js'

/**
 * A period of months or years that was converted to days with an average month: 91, 183, 365 or 730 days.
 * After a leap year the due date is wrong. Write months instead.
 * Judges: Every stated interval, including overrides, whose period has only days. Finds days equal to count ×
 * year ÷ 12, rounded down or up, for a year of 365.25 or 365 days and a count of 3, 4, 6, 9, 12, 18, 24, 36,
 * 48 or 60 months. The smallest count that fits is used.
 * Place: `<interval>/period`
 * Params: days: as written; months: the count that fits
 * Harm: job
 * House rule.
 */
export const rule = intervalRule('interval/months-as-days', 'warning', ({ interval, path }) => {
  const period = interval.period === undefined ? undefined : scanPeriod(interval.period)
  if (period === undefined || period.years + period.months + period.weeks > 0) return []
  const months = MONTHS.find((count) =>
    [365.25, 365].some((year) =>
      [Math.floor, Math.ceil].some((round) => round((year / 12) * count) === period.days),
    ),
  )
  return months === undefined ? [] : [{ path: `${path}/period`, params: { days: period.days, months } }]
})

const MONTHS = [3, 4, 6, 9, 12, 18, 24, 36, 48, 60]
