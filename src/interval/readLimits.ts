import { refuse } from '../base/index.js'
import { scanPeriod } from '../calendar/index.js'
import { isFigure } from '../quantity/index.js'
import type { IntervalStated } from '../spec/index.js'
import type { DueLine } from './dueVerdict.js'
import { type MeterUnit, meterCount } from './meterCount.js'

/** One limit of an interval: months and days of the calendar, or 0 months and the counts of a meter. */
export interface Limit {
  readonly months: number
  readonly counts: number
  /** The limit as shown in a line. */
  readonly asQuantity: NonNullable<DueLine['limit']>
  /** The printed limit, for a meter. */
  readonly printed?: NonNullable<DueLine['printed']>
}

/** The limits of an interval in comparable numbers; a limit that is not stated is absent. */
export type Limits = { readonly [By in (typeof LIMIT_NAMES)[number]]?: Limit }

export const LIMIT_NAMES = ['hours', 'distance', 'period'] as const

/** Reads an interval's figures. If a distance is printed as two round numbers, the shorter one is used. */
export function readLimits({ hours, distance, period }: IntervalStated, intervalName: string): Limits {
  const limits: { -readonly [By in keyof Limits]: Limits[By] } = {}
  const readFigure = (by: 'hours' | 'distance', value: string, unit: MeterUnit): void => {
    const number = isFigure(value) ? Number(value) : NaN
    const counts = meterCount(number, unit)
    if (!Number.isSafeInteger(counts))
      throw refuse(
        `intervals.${intervalName}.${by}`,
        value,
        "a decimal such as '250' in the meter's range",
        'string',
      )
    const before = limits[by]
    if (!before || counts < before.counts)
      limits[by] = { months: 0, counts, asQuantity: { value: number, unit }, printed: { value, unit } }
  }
  if (hours !== undefined) readFigure('hours', hours, 'h')
  if (distance !== undefined) {
    readFigure('distance', distance.value, distance.unit)
    for (const { value, unit } of distance.printed ?? []) readFigure('distance', value, unit)
  }
  if (period !== undefined) {
    const parts = typeof period === 'string' ? scanPeriod(period) : undefined
    if (!parts) throw refuse(`intervals.${intervalName}.period`, period, 'a period such as P6M', 'string')
    const { years, months, weeks, days } = parts
    limits.period = { months: years * 12 + months, counts: weeks * 7 + days, asQuantity: { period } }
  }
  return limits
}
