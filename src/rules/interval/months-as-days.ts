import { scanPeriod } from '../../calendar/index.js'
import { defineRule } from '../rule.js'

/**
 * Months or years that went through days or seconds: a period of 91, 183, 365 or 730 days is a quarter, half a year, one
 * year or two, turned into days by someone's average month. It falls due on a wrong date after each leap year. Write months.
 * House rule: day counts from 90 on that are so many average months (365.25 or 365 days a year), rounded either way.
 */
export const monthsAsDays = defineRule({
  code: 'interval/months-as-days',
  severity: 'warning',
  about: 'spec-sheet',
  check: ({ sheet }) =>
    sheet.intervals.flatMap(({ interval, path }) => {
      const period = interval.period === undefined ? undefined : scanPeriod(interval.period)
      if (period === undefined || period.years + period.months + period.weeks > 0) return []
      const months = MONTHS.find((count) =>
        [365.25, 365].some((year) =>
          [Math.floor, Math.ceil].some((round) => round((year / 12) * count) === period.days),
        ),
      )
      return months === undefined ? [] : [{ path: `${path}/period`, params: { days: period.days, months } }]
    }),
})

const MONTHS = [3, 4, 6, 9, 12, 18, 24, 36, 48, 60]
