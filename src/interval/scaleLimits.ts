import type { Reason } from '../finding.js'
import { isFigure } from './isFigure.js'
import { quantityOf } from './meterCount.js'
import { LIMITS, type Limit, type Limits } from './readLimits.js'

const MILLION = 1_000_000n

/** A factor times counts, half up in exact integers; a period only where whole months and whole days come out. */
export function scaleLimits(limits: Limits, factor: string, missing: Reason[]): Limits {
  if (!isFigure(String(factor))) {
    throw new RangeError(
      `intervals.severe.factor is ${JSON.stringify(factor)}; it must be a decimal such as "0.5"`,
    )
  }
  const millionths = BigInt(Math.round(Number(factor) * 1e6))
  const scale = (limit: Limit): Limit => {
    const { told } = limit
    const months = BigInt(limit.months) * millionths
    const counts = BigInt(limit.counts) * millionths
    if (!('period' in told)) {
      const rounded = Number((counts + MILLION / 2n) / MILLION)
      const quantity = quantityOf(rounded, told.unit)
      return { months: 0, counts: rounded, told: quantity, printed: quantity }
    }
    if (months % MILLION || counts % MILLION) {
      missing.push({ code: 'interval/factor-leaves-part', params: { period: told.period, factor } })
      return { ...limit, months: Number.NaN }
    }
    const wholeMonths = Number(months / MILLION)
    const days = Number(counts / MILLION)
    const period = `P${wholeMonths > 0 ? `${wholeMonths}M` : ''}${days > 0 || wholeMonths === 0 ? `${days}D` : ''}`
    return { months: wholeMonths, counts: days, told: { period } }
  }
  const scaled: { -readonly [By in keyof Limits]: Limits[By] } = {}
  for (const by of LIMITS) {
    const limit = limits[by]
    if (limit !== undefined) scaled[by] = scale(limit)
  }
  return scaled
}
