import { addToDay, type DateText, dateFromDay } from '../calendar/index.js'
import type { DueLine, MeterQuantity } from './dueVerdict.js'
import { quantityFromCounts } from './meterCount.js'
import type { MeterPoint } from './meterState.js'

/** The scale of a limit: the calendar in days, or a meter in counts. */
export interface LimitScale {
  readonly unit: 'd' | MeterQuantity['unit']
  /** The start of the count. */
  readonly start: number
  readonly now: number
  /** Days of use since `now` was read. */
  readonly age: number
  /** The counts of a meter's earlier displays; points are shown as readings of the current display. */
  readonly earlierCounts: number
  readonly from: NonNullable<DueLine['from']>
  readonly read: NonNullable<DueLine['now']>
  /** The readings of a meter's current stretch. */
  readonly points: readonly MeterPoint[]
}

/** Adds a limit to a point; NaN past the calendar's end. */
export function addLimit({ unit }: LimitScale, point: number, months: number, counts: number): number {
  return unit === 'd' ? addToDay(point, months, counts) : point + counts
}

/** Writes a point for a line: its date, or the reading of the meter. */
export function describePoint(
  { unit, earlierCounts }: LimitScale,
  point: number,
): { readonly date?: DateText; readonly meter?: Pick<MeterQuantity, 'value' | 'unit'> } {
  return unit === 'd'
    ? { date: dateFromDay(point) }
    : { meter: quantityFromCounts(point - earlierCounts, unit) }
}
