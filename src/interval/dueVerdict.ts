import type { Reason } from '../base/index.js'
import type { DateText } from '../calendar/index.js'
import type { DistanceUnit, Quantity } from '../quantity/index.js'

/** In order of precedence: the first that any limit has is the verdict on the service. */
export type DueState = 'overdue' | 'due' | 'cannot tell' | 'due soon' | 'not due'

export type DueLimit = 'hours' | 'distance' | 'period' | 'event'

export type MeterQuantity = Quantity<'h' | DistanceUnit>

/** One limit of an interval, or one event, and how much of it is used. */
export interface DueLine {
  readonly by: DueLimit
  /** `not tracked`: the machine has no such meter; the line is not counted. */
  readonly verdict: DueState | 'not tracked'
  /** The start of the count. */
  readonly since?: 'last service' | 'first use' | 'rebuild'
  /** The date and the reading at the start of the count. */
  readonly from?: { readonly date?: DateText; readonly meter?: MeterQuantity }
  readonly limit?: MeterQuantity | { readonly period: string }
  /** The printed limit, for a meter. */
  readonly printed?: { readonly value: number | string; readonly unit: 'h' | DistanceUnit }
  readonly used?: Quantity<'h' | DistanceUnit | 'd'>
  /** Negative if the limit is passed. */
  readonly left?: Quantity<'h' | DistanceUnit | 'd'>
  readonly duePoint?: { readonly date?: DateText; readonly meter?: MeterQuantity }
  /** Past this point the service is overdue; absent if it equals the due point. */
  readonly overdueAfter?: { readonly date?: DateText; readonly meter?: MeterQuantity }
  /** The reading that was judged. */
  readonly now?: { readonly date: DateText; readonly meter?: MeterQuantity }
  /** The share of the interval that is used; 1 is the due point. */
  readonly fraction?: number
  /** The day on which the limit is reached; for a meter, at the average use so far. */
  readonly dueOn?: DateText
}

interface DueReasons {
  readonly lines: readonly DueLine[]
  /** The day on which the first limit is reached, if it is known. */
  readonly dueOn?: DateText
  /** A reason for each line and each choice, in reading order. */
  readonly reasons: readonly Reason[]
  /** The missing facts, one reason for each. */
  readonly missing: readonly Reason[]
}

interface FirstLimit {
  /** The limit that comes first. */
  readonly dueBy: DueLimit
  /**
   * The way the first limit was found: by days, by the fraction used if a day is not known, or because it is
   * the only limit.
   */
  readonly decidedBy: 'days' | 'fraction used' | 'only limit' | 'event'
}

interface KnownVerdict extends DueReasons, FirstLimit {
  readonly verdict: DueState
}

/** The first limit may be unknown. */
interface UnknownVerdict extends DueReasons, Partial<FirstLimit> {
  readonly verdict: 'cannot tell'
}

/** Whether one service of one gearcase is due, and why. */
export type DueVerdict = KnownVerdict | UnknownVerdict
