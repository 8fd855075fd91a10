import type { Reason } from '../base/index.js'
import { addToDay, type DateText, dateFromDay } from '../calendar/index.js'
import type { MeterName } from '../spec/index.js'
import { intervalReason } from './codes.js'
import { countPauseDays } from './countPauseDays.js'
import type { CountOrigin, DueCase } from './dueCase.js'
import type { DueLine, MeterQuantity } from './dueVerdict.js'
import { quantityFromCounts } from './meterCount.js'
import type { MeterPoint } from './meterState.js'

/** A meter as a scale for a limit; undefined if the machine has no such meter. Bad readings are added to `reasons`. */
export function readMeterScale(
  { facts, readers, today, start, reasons }: DueCase,
  by: MeterName,
): LimitScale | Reason | undefined {
  const { log } = facts
  const meter = readers.meters(log, by, today)
  if (!meter) return undefined
  for (const { code, severity, params } of meter.notes)
    if (severity === 'error') reasons.push({ code, params })
  const { points, unit } = meter
  const now = points.at(-1)
  if (!now) return intervalReason('interval/reading-missing', { meter: by })
  const first = findPoint(points, start)
  if (!first) {
    const params = { meter: by, of: start.since, date: start.date }
    return intervalReason('interval/reading-at-start-missing', params)
  }
  const at = points.findIndex(({ stretch }) => stretch === now.stretch)
  if (first.stretch !== now.stretch) {
    const params = { meter: by, from: (points[at - 1] ?? now).date, to: (points[at] ?? now).date }
    return intervalReason('interval/meter-broken', params)
  }
  const earlierCounts = now.count - now.shown
  const less = earlierCounts - first.count + first.shown
  if (less !== 0)
    reasons.push(
      intervalReason('interval/display-changed', { meter: by, less: quantityFromCounts(less, unit) }),
    )
  const from = quantityFromCounts(first.shown, unit)
  return {
    unit,
    start: first.count,
    now: now.count,
    age: today - now.day - countPauseDays(log.pauses, now.day, today),
    earlierCounts,
    from: start.date === '' ? { meter: from } : { date: start.date, meter: from },
    reading: { date: now.date, meter: quantityFromCounts(now.shown, unit) },
    points: points.slice(at),
  }
}

/** The machine's zero. */
const MACHINE_ZERO = { count: 0, shown: 0, stretch: 0 }

/** The reading of a record, otherwise the smallest of its day, since the earlier due point is the safe one. */
export function findPoint(
  points: readonly MeterPoint[],
  { since, day, record }: CountOrigin,
): Pick<MeterPoint, 'count' | 'shown' | 'stretch'> | undefined {
  if (since === 'first use') return MACHINE_ZERO
  let firstOfDay: MeterPoint | undefined
  for (const point of points) {
    if (point.day !== day) continue
    if (point.list === 'records' && point.index === record) return point
    firstOfDay ??= point
  }
  return firstOfDay
}

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
  readonly reading: NonNullable<DueLine['now']>
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
