import type { Params, Severity } from '../base/index.js'
import type { CalendarCodes, DateText } from '../calendar/index.js'
import type { MeterName } from '../spec/index.js'
import type { IntervalCodes } from './codes.js'
import type { MeterUnit } from './meterCount.js'

/** One reading with everything before it counted in. */
export interface MeterPoint {
  day: number
  date: DateText
  /** What the display showed, in counts. */
  shown: number
  /** Accumulated since the start of its stretch, in counts; of stretch 0: since the machine's zero. */
  count: number
  /** A stretch ends where the meter fell or jumped and no event says why: across that, nothing can be subtracted. */
  stretch: number
  /** Which list of the log it is in, and where. */
  list: 'readings' | 'records' | 'events'
  index: number
}

/** What can be wrong with a reading. */
export type MeterCodes = Pick<
  IntervalCodes & CalendarCodes,
  | 'calendar/not-a-date'
  | 'interval/in-the-future'
  | 'interval/meter-falls'
  | 'interval/meter-jumps'
  | 'interval/reading-out-of-bounds'
  | 'interval/reading-repeated'
  | 'interval/readings-out-of-order'
  | 'interval/rollover-limit-missing'
  | 'interval/rollover-assumed'
>

/** What is wrong with a reading; `readMeters` makes a finding of it. */
export interface MeterNote {
  readonly code: keyof MeterCodes
  readonly severity: Severity
  readonly params: Params
  readonly point: MeterPoint
  /** The reading before it, if the note is about both. */
  readonly last?: MeterPoint | undefined
}

/** A meter while its log is followed. */
export interface MeterState {
  readonly name: MeterName
  readonly unit: MeterUnit
  /** What the display counts before it starts again from zero; NaN: not known. */
  readonly modulus: number
  readonly points: MeterPoint[]
  readonly notes: MeterNote[]
  /** How many of the points are counted; repeated ones are skipped. */
  kept: number
  /** The reading counted last. */
  last: MeterPoint | undefined
  offset: number
  stretch: number
}

/** Notes what is wrong with a reading, and with the one before it if the note is about both. */
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
