import { scanPeriod } from '../../calendar/index.js'
import { defineRule } from '../rule.js'

/**
 * A factor for severe use that leaves part of a month or of a day: three months times 0.5 is no date that anyone can name,
 * so that limit could never be told. Write the interval for severe use out. House rule: months and days are never turned
 * into one another.
 */
export const factorLeavesPart = defineRule({
  code: 'interval/factor-leaves-part',
  severity: 'error',
  about: 'spec-sheet',
  check: ({ sheet }) =>
    sheet.schedules.flatMap(({ path, intervals: { severe, repeat } }) => {
      if (severe?.kind !== 'factor' || repeat.kind !== 'interval' || repeat.period === undefined) return []
      const period = scanPeriod(repeat.period)
      const millionths = Math.round(Number(severe.factor) * 1e6)
      if (period === undefined || Number.isNaN(millionths)) return []
      const leaves = [period.years * 12 + period.months, period.weeks * 7 + period.days].some(
        (whole) => (BigInt(whole) * BigInt(millionths)) % 1_000_000n !== 0n,
      )
      return leaves
        ? [{ path: `${path}/severe/factor`, params: { period: repeat.period, factor: severe.factor } }]
        : []
    }),
})
