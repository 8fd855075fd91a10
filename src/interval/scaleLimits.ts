import type { Reason } from '../base/index.js'
import { refuse } from '../base/index.js'
import { isFigure } from '../quantity/index.js'
import { quantityOf } from './meterCount.js'
import type { Limits } from './readLimits.js'

const MILLION = 1_000_000n

/** A factor times counts, half up in exact integers; a period only where whole months and whole days come out. */
export function scaleLimits(limits: Limits, factor: string, missing: Reason[]): Limits {
  if (!isFigure(factor)) throw refuse('intervals.severe.factor', factor, "a decimal such as '0.5'", 'string')
  const millionths = BigInt(Math.round(Number(factor) * 1e6))
  const scaled: { -readonly [By in keyof Limits]: Limits[By] } = {}
  for (const by of ['hours', 'distance', 'period'] as const) {
    const limit = limits[by]
    if (limit === undefined) continue
    const { told } = limit
    const months = BigInt(limit.months) * millionths
    const counts = BigInt(limit.counts) * millionths
    if (!('period' in told)) {
      const rounded = Number((counts + MILLION / 2n) / MILLION)
      const quantity = quantityOf(rounded, told.unit)
      scaled[by] = { months: 0, counts: rounded, told: quantity, printed: quantity }
    } else if (months % MILLION || counts % MILLION) {
      missing.push({ code: 'interval/fractional-period', params: { period: told.period, factor } })
      scaled[by] = { ...limit, months: Number.NaN }
    } else {
      const wholeMonths = Number(months / MILLION)
      const days = Number(counts / MILLION)
      const period = `P${wholeMonths > 0 ? `${wholeMonths}M` : ''}${days > 0 || wholeMonths === 0 ? `${days}D` : ''}`
      scaled[by] = { months: wholeMonths, counts: days, told: { period } }
    }
  }
  return scaled
}
