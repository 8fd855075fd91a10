import { scanPeriod } from '../calendar/scanPeriod.js'
import type { Quantity } from '../quantity/unit.js'
import type { IntervalStated, PeriodText } from '../spec/leaf.js'
import { type MeterUnit, meterCount } from './meterCount.js'

/** One meter's share of an interval: in counts, and as a manual prints it. */
export interface MeterLimit {
  readonly counts: number
  readonly printed: { readonly value: number | string; readonly unit: MeterUnit }
}

export interface PeriodLimit {
  readonly months: number
  readonly days: number
  readonly printed: PeriodText
}

/** The limits of an interval, ready to be compared; what the interval does not name is absent. */
export interface Limits {
  readonly hours?: MeterLimit | undefined
  readonly distance?: MeterLimit | undefined
  readonly period?: PeriodLimit | undefined
}

/** Reads an interval's figures. Where a distance is printed in two round numbers, the shorter one is taken. */
export function readLimits(interval: IntervalStated, argument: string): Limits {
  const { hours, distance, period } = interval
  let shortest: MeterLimit | undefined
  if (distance !== undefined) {
    shortest = readMeterLimit(distance.value, distance.unit, argument)
    if (distance.printed !== undefined) {
      for (const other of distance.printed) {
        const limit = readMeterLimit(other.value, other.unit, argument)
        if (limit.counts < shortest.counts) shortest = limit
      }
    }
  }
  return {
    hours: hours === undefined ? undefined : readMeterLimit(hours, 'h', argument),
    distance: shortest,
    period: period === undefined ? undefined : readPeriodLimit(period, argument),
  }
}

function readMeterLimit(value: string, unit: MeterUnit, argument: string): MeterLimit {
  const number = isFigure(value) ? Number(value) : Number.NaN
  const counts = meterCount(number, unit)
  if (!Number.isSafeInteger(counts)) {
    throw new RangeError(
      `${argument} has the figure ${JSON.stringify(value)} ${unit}; it must be a decimal such as "250", within the meter's range`,
    )
  }
  return { counts, printed: { value, unit } satisfies Omit<Quantity, 'value'> & { value: string } }
}

function readPeriodLimit(text: PeriodText, argument: string): PeriodLimit {
  const period = typeof text === 'string' ? scanPeriod(text) : undefined
  if (period === undefined) {
    throw new RangeError(
      `${argument} has the period ${JSON.stringify(text)}; it must be whole parts such as P6M or P1Y`,
    )
  }
  return { months: period.years * 12 + period.months, days: period.weeks * 7 + period.days, printed: text }
}

/** Digits, and at most one point with digits on both sides; scanned by hand, since this runs for every machine of a fleet. */
function isFigure(value: unknown): value is string {
  if (typeof value !== 'string' || value.length > 16) return false
  let point = 0
  for (let at = 0; at < value.length; at++) {
    const digit = value.charCodeAt(at) - 48
    if (digit >= 0 && digit <= 9) continue
    if (digit !== -2 || point > 0 || at === 0 || at > 9) return false
    point = at
  }
  return point > 0
    ? value.length - point > 1 && value.length - point <= 7
    : value.length > 0 && value.length <= 9
}
