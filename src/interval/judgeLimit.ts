import type { Param, Reason } from '../base/index.js'
import { addToDay, type DateText, dateFromDay } from '../calendar/index.js'
import type { MachineLog } from '../spec/index.js'
import { intervalReason } from './codes.js'
import { countPauseDays, findDayAfterUse } from './countPauseDays.js'
import type { DueCase } from './dueCase.js'
import type { DueLine, DueState } from './dueVerdict.js'
import { findNextDuePoint } from './findNextDuePoint.js'
import type { DueOptions } from './intervalFacts.js'
import { fractionOfCounts, meterCount, quantityFromCounts } from './meterCount.js'
import type { MeterPoint } from './meterState.js'
import type { Limit, Limits } from './readLimits.js'
import { addLimit, describePoint, type LimitScale, readMeterScale } from './readMeterScale.js'

/**
 * Judges one limit: due from the due point on, overdue past its window, due soon from the soon point on. An old reading
 * supports `due soon`, but not `not due`.
 */
export function judgeLimit(due: DueCase, by: keyof Limits, limit: Limit): DueLine {
  const { facts, options, limits, completions, start, reasons, missing } = due
  const { asQuantity, months, counts } = limit
  const unknownLine: DueLine = { by, verdict: 'cannot tell', limit: asQuantity }
  const cannotTell = (reason: Reason): DueLine => {
    missing.push(reason)
    return unknownLine
  }
  // A factor made the period fractional, which is already reported.
  if (Number.isNaN(months)) return unknownLine
  const scale = by === 'period' ? readCalendar(due) : readMeterScale(due, by)
  if (!scale) {
    reasons.push(intervalReason('interval/not-tracked', { meter: by }))
    return { by, verdict: 'not tracked', limit: asQuantity }
  }
  if (months + counts === 0) return cannotTell(intervalReason('interval/limit-not-above-zero', { by }))
  if ('code' in scale) return cannotTell(scale)
  const isScheduled = completions.length > 0 && facts.intervals.countFrom !== 'completion'
  const schedule = isScheduled ? findNextDuePoint(due, by, limit, scale) : undefined
  const dueAt = schedule ? schedule.due : addLimit(scale, scale.start, months, counts)
  // Past the calendar's end, or a service of the schedule has no reading.
  if (Number.isNaN(dueAt))
    return cannotTell(
      'period' in asQuantity
        ? intervalReason('interval/due-date-out-of-calendar', { period: asQuantity.period, from: start.date })
        : intervalReason('interval/reading-at-start-missing', {
            meter: by,
            of: 'schedule',
            date: completions[0]?.date ?? '',
          }),
    )

  const { now, age } = scale
  const staleAfter = options.staleAfter.days
  const window = limits.window?.[by]
  // NaN if the window is not known or ends past the calendar: nothing is later than NaN.
  let overdueAt = limits.window ? dueAt : NaN
  if (window) overdueAt = addLimit(scale, dueAt, window.months, window.counts)
  const isStale = age > staleAfter
  let verdict: DueState = isStale ? 'cannot tell' : 'not due'
  if (now > overdueAt) verdict = 'overdue'
  else if (now >= dueAt) verdict = 'due'
  else if (isDueSoon(options.soon, by, scale, dueAt)) verdict = 'due soon'
  const line = makeLine(due, by, limit, scale, dueAt, verdict)
  // The line doubles as the reason's params.
  reasons.push(intervalReason(by === 'period' ? 'interval/by-date' : 'interval/by-meter', line))
  if (overdueAt > dueAt) {
    line.overdueAfter = describePoint(scale, overdueAt)
    const { date, meter } = line.overdueAfter
    if (verdict === 'due')
      reasons.push(intervalReason('interval/window-left', { until: (date ?? meter) as Param }))
  }
  if (schedule?.note) {
    const { date, meter } = describePoint(scale, schedule.notedPoint)
    const params = { by, date: start.date, point: (date ?? meter) as Param }
    reasons.push(intervalReason(`interval/${schedule.note}`, params))
  }
  if (isStale && now < dueAt) {
    const params = { meter: by, date: scale.reading.date, days: age, staleAfter }
    const list = verdict === 'cannot tell' ? missing : reasons
    list.push(intervalReason('interval/reading-stale', params))
  }
  return line
}

/**
 * The calendar as a scale for a limit. Due points are counted from the start, never from the last due point.
 */
function readCalendar({ facts, today, start, origin }: DueCase): LimitScale | Reason {
  const { day, date } = start
  if (Number.isNaN(facts.intervals.countFrom === 'completion' ? day : origin.day))
    return intervalReason('interval/first-use-missing', {})
  const reading = { date: facts.today }
  return {
    unit: 'd',
    start: day,
    now: today,
    age: 0,
    earlierCounts: 0,
    from: { date },
    reading,
    points: [],
  }
}

/** Whether the due point is near enough, by amount or by fraction, to be due soon. */
function isDueSoon(
  { hours, distance, days, fraction }: DueOptions['soon'],
  by: keyof Limits,
  { start, now }: LimitScale,
  due: number,
): boolean {
  let soonLead = days
  if (by === 'hours') soonLead = hours && meterCount(hours, 'h')
  if (by === 'distance') soonLead = distance && meterCount(distance.value, distance.unit)
  // A missing option is NaN, and no comparison with NaN is true.
  return now >= due - (soonLead ?? NaN) || now >= start + fractionOfCounts(due - start, fraction ?? NaN)
}

/** A line that is not yet complete. */
type MutableLine = { -readonly [Key in keyof DueLine]: DueLine[Key] }

/** The line of a limit whose due point is known. */
function makeLine(
  { facts, start: { since } }: DueCase,
  by: keyof Limits,
  { asQuantity: limit, printed }: Limit,
  scale: LimitScale,
  due: number,
  verdict: DueState,
): MutableLine {
  const { unit, from, reading: now } = scale
  const usedCounts = scale.now - scale.start
  const totalCounts = due - scale.start
  const used = quantityFromCounts(usedCounts, unit)
  const left = quantityFromCounts(due - scale.now, unit)
  const fraction = totalCounts > 0 ? usedCounts / totalCounts : 1
  const duePoint = describePoint(scale, due)
  const dueOn = duePoint.date ?? estimateDueDate(facts.log.pauses, scale.points, due)
  const line: MutableLine = { by, verdict, since, from, limit, used, left, duePoint, now, fraction }
  if (printed) line.printed = printed
  if (dueOn) line.dueOn = dueOn
  return line
}

/**
 * The day on which the meter reaches a count: interpolated between two readings, or projected at the average
 * use of this stretch. Undefined if there are no readings of two days, or the day is past the calendar's end.
 */
function estimateDueDate(
  pauses: MachineLog['pauses'],
  points: readonly MeterPoint[],
  due: number,
): DateText | undefined {
  const index = points.findIndex(({ count }) => count >= due)
  const isReached = index >= 0
  // If the count is not reached, the index is −1: the newest reading.
  const after = points.at(index)
  // The last reading below the count if the count is reached, otherwise the first reading, for an average.
  const before = points[isReached ? index - 1 : 0]
  if (!after) return undefined
  if (!before) return dateFromDay(after.day)
  const days = after.day - before.day - (isReached ? 0 : countPauseDays(pauses, before.day, after.day))
  const rise = after.count - before.count
  // If the meter has not risen, there is no day within the calendar.
  if (!isReached && days <= 0) return undefined
  const daysAhead = Math.ceil(((due - after.count) * days) / rise)
  const day = addToDay(findDayAfterUse(pauses, after.day, daysAhead), 0, 0)
  return Number.isNaN(day) ? undefined : dateFromDay(day)
}
