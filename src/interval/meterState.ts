import type { Params, Severity } from '../base/index.js'
import type { CalendarCodes, DateText } from '../calendar/index.js'
import type { MeterName } from '../spec/index.js'
import type { IntervalCodes } from './codes.js'
import type { MeterUnit } from './meterCount.js'

/** One reading with the total up to it. */
export interface MeterPoint {
  day: number
  date: DateText
  /** The reading of the display, in counts. */
  shown: number
  /** The total in counts since the start of its stretch; in stretch 0 since the machine's zero. */
  count: number
  /** Readings of different stretches cannot be subtracted: between them the meter fell or jumped without an event. */
  stretch: number
  /** Its list in the log, and its index in that list. */
  list: 'readings' | 'records' | 'events'
  index: number
}

/** Codes for mistakes in readings. */
export type MeterCodes = Pick<
  IntervalCodes & CalendarCodes,
  | 'calendar/not-a-date'
  | 'interval/date-in-the-future'
  | 'interval/meter-falls'
  | 'interval/meter-jumps'
  | 'interval/reading-out-of-bounds'
  | 'interval/reading-repeated'
  | 'interval/readings-out-of-order'
  | 'interval/rollover-limit-missing'
  | 'interval/rollover-assumed'
>

/** A mistake in a reading; `readMeters` turns it into a finding. */
export interface MeterNote {
  readonly code: keyof MeterCodes
  readonly severity: Severity
  readonly params: Params
  readonly point: MeterPoint
  /** The reading before it, if the note is about both. */
  readonly last?: MeterPoint | undefined
}

/** The state of a meter while its log is read. */
export interface MeterState {
  readonly name: MeterName
  readonly unit: MeterUnit
  /** The count at which the display starts again from zero; NaN: unknown. */
  readonly modulus: number
  readonly points: MeterPoint[]
  readonly notes: MeterNote[]
  /** Number of points kept; repeated readings are skipped. */
  keptCount: number
  /** The last reading added; before they are added up, the newest one that was read. */
  last: MeterPoint | undefined
  offset: number
  stretch: number
}

/** Notes a mistake in a reading; `last` is the one before it, if the note is about both. */
export function noteReading<Code extends MeterNote['code']>(
  state: MeterState,
  code: Code,
  severity: Severity,
  point: MeterPoint,
  params: MeterCodes[Code],
  last?: MeterPoint,
): void {
  state.notes.push({ code, severity, params, point, last })
}
