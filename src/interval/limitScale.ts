import { addToDay, type DateText, dateFromDay } from '../calendar/index.js'
import type { DueLine, MeterQuantity } from './dueVerdict.js'
import { quantityOf } from './meterCount.js'
import type { MeterPoint } from './meterState.js'

/** What a limit is measured on: the calendar in days, or a meter in counts. */
export interface LimitScale {
  readonly unit: 'd' | MeterQuantity['unit']
  /** Where the count began. */
  readonly start: number
  readonly now: number
  /** How many days of use have passed since `now` was read. */
  readonly age: number
  /** What a meter's earlier displays counted: places are given as readings of the current display. */
  readonly earlier: number
  readonly from: NonNullable<DueLine['from']>
  readonly read: NonNullable<DueLine['now']>
  /** A meter's readings since it last broke off. */
  readonly points: readonly MeterPoint[]
}

/** The place one limit after another; NaN past the calendar's end. */
export function addOnScale({ unit }: LimitScale, place: number, months: number, counts: number): number {
  return unit === 'd' ? addToDay(place, months, counts) : place + counts
}

/** A place as a line shows it: its date, or what the meter shows there. */
export function describePlace(
  { unit, earlier }: LimitScale,
  place: number,
): { readonly date?: DateText; readonly meter?: Pick<MeterQuantity, 'value' | 'unit'> } {
  return unit === 'd' ? { date: dateFromDay(place) } : { meter: quantityOf(place - earlier, unit) }
}
