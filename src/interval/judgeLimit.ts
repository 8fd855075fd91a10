import type { Params, Reason } from '../base/index.js'
import { addToDay, type DateText, dateFromDay } from '../calendar/index.js'
import type { MachineLog } from '../spec/index.js'
import type { DueCase } from './dueCase.js'
import type { DueLine, DueState } from './dueVerdict.js'
import { followSchedule } from './followSchedule.js'
import type { DueOptions } from './intervalFacts.js'
import { addOnScale, describePlace, type LimitScale } from './limitScale.js'
import { meterCount, partOf, quantityOf } from './meterCount.js'
import type { MeterPoint } from './meterState.js'
import { afterDaysOfUse, pauseDays } from './pauseDays.js'
import { type Limit, type Limits, limitOf } from './readLimits.js'
import { readMeterScale } from './readMeterScale.js'

/**
 * The line of one limit, on its scale. Due at the point itself; overdue past the point and its window; soon at the soon point
 * itself. A reading that is too old supports `due soon`, but not `not due`.
 */
export function judgeLimit(due: DueCase, by: keyof Limits, limit: Limit): DueLine {
  const { facts, options, limits, completions, start, reasons } = due
  const { staleAfter, soon } = options
  // The period that a factor made fractional is reported already.
  if (Number.isNaN(limit.months)) return { by, verdict: 'cannot tell', limit: limit.asQuantity }
  const scale = by === 'period' ? readCalendar(due) : readMeterScale(due, by)
  if (scale === undefined) {
    reasons.push({ code: 'interval/not-tracked', params: { meter: by } })
    return { by, verdict: 'not tracked', limit: limit.asQuantity }
  }
  if (limit.months + limit.counts === 0)
    return cannotTell(due, by, limit, { code: 'interval/limit-not-above-zero', params: { by } })
  if ('code' in scale) return cannotTell(due, by, limit, scale)
  const isScheduled = completions.length > 0 && facts.intervals.countFrom !== 'completion'
  const schedule = isScheduled ? followSchedule(due, by, limit, scale) : undefined
  const dueAt = schedule?.due ?? addOnScale(scale, scale.start, limit.months, limit.counts)
  if (Number.isNaN(dueAt)) return cannotTell(due, by, limit, whyNoDuePoint(due, by, limit))

  const { now, age } = scale
  const window = limits.window && limitOf(limits.window, by)
  // A window that is not known gives NaN, as one past the calendar's end does, and nothing is later than NaN.
  const past =
    limits.window === undefined
      ? Number.NaN
      : window === undefined
        ? dueAt
        : addOnScale(scale, dueAt, window.months, window.counts)
  const stale = age > staleAfter.days
  const line = writeLine(
    due,
    by,
    limit,
    scale,
    dueAt,
    now > past
      ? 'overdue'
      : now >= dueAt
        ? 'due'
        : isSoon(soon, by, scale, dueAt)
          ? 'due soon'
          : stale
            ? 'cannot tell'
            : 'not due',
  )
  // The line doubles as the reason's params.
  const params = line as unknown as Params
  const count = reasons.push({ code: by === 'period' ? 'interval/by-date' : 'interval/by-meter', params })
  if (past > dueAt) {
    const until = describePlace(scale, past)
    line.overdueAfter = until
    if (line.verdict === 'due')
      reasons.push({ code: 'interval/window-left', params: { until: until.date ?? until.meter } })
  }
  if (schedule?.note !== undefined) {
    const { date, meter } = describePlace(scale, schedule.noted)
    // For dates this reason precedes window-left; for meters it follows.
    reasons.splice(by === 'period' ? count : reasons.length, 0, {
      code: `interval/${schedule.note}`,
      params: { by, date: start.date, point: date ?? meter },
    })
  }
  if (stale && now < dueAt) {
    const params = { meter: by, date: scale.read.date, days: age, staleAfter: staleAfter.days }
    const list = line.verdict === 'cannot tell' ? due.missing : reasons
    list.push({ code: 'interval/reading-stale', params })
  }
  return line
}

/** The line of a limit that cannot be determined, for a reason. */
function cannotTell({ missing }: DueCase, by: keyof Limits, { asQuantity }: Limit, reason: Reason): DueLine {
  missing.push(reason)
  return { by, verdict: 'cannot tell', limit: asQuantity }
}

/** Why a limit has no due point: past the calendar's end, or a service of the schedule without a reading. */
function whyNoDuePoint({ completions, start }: DueCase, by: keyof Limits, { asQuantity }: Limit): Reason {
  if ('period' in asQuantity) {
    const params = { period: asQuantity.period, from: start.date }
    return { code: 'interval/due-date-out-of-calendar', params }
  }
  const params = { meter: by, of: 'schedule', date: completions[0]?.date ?? '' }
  return { code: 'interval/reading-at-start-missing', params }
}

/** The calendar as a scale for a limit. Points are counted from their start, never from the last point. */
function readCalendar({ facts, today, start, zero }: DueCase): LimitScale | Reason {
  const { day, date } = start
  if (Number.isNaN(facts.intervals.countFrom === 'completion' ? day : zero.day))
    return { code: 'interval/first-use-missing', params: {} }
  const read = { date: facts.today }
  return { unit: 'd', start: day, now: today, age: 0, earlier: 0, from: { date }, read, points: [] }
}

/** Whether the due point is so near, or so much of the way to it is used, that it counts as soon. */
function isSoon(
  { hours, distance, days, fraction }: DueOptions['soon'],
  by: keyof Limits,
  { start, now }: LimitScale,
  due: number,
): boolean {
  // A lead that the caller leaves out is NaN, and no comparison with NaN is true.
  let lead = days
  if (by === 'hours') lead = hours && meterCount(hours, 'h')
  if (by === 'distance') lead = distance && meterCount(distance.value, distance.unit)
  return now >= due - (lead ?? Number.NaN) || now >= start + partOf(due - start, fraction ?? Number.NaN)
}

/** A line while it is made. */
type OpenLine = { -readonly [Key in keyof DueLine]: DueLine[Key] }

/** The line of a limit whose due point is known. */
function writeLine(
  { facts, start: { since } }: DueCase,
  by: keyof Limits,
  { asQuantity: limit, printed }: Limit,
  scale: LimitScale,
  due: number,
  verdict: DueState,
): OpenLine {
  const { unit, from, read: now } = scale
  const gone = scale.now - scale.start
  const way = due - scale.start
  const used = quantityOf(gone, unit)
  const left = quantityOf(due - scale.now, unit)
  const fraction = way > 0 ? gone / way : 1
  const duePoint = describePlace(scale, due)
  const dueOn = duePoint.date ?? projectDate(facts.log.pauses, scale.points, due)
  // Whole at once: a key that is added later makes every line of a fleet a second object.
  if (dueOn === undefined) {
    const line: OpenLine = { by, verdict, since, from, limit, used, left, duePoint, now, fraction }
    if (printed !== undefined) line.printed = printed
    return line
  }
  if (printed === undefined)
    return { by, verdict, since, from, limit, used, left, duePoint, now, fraction, dueOn }
  return { by, verdict, since, from, limit, used, left, duePoint, now, fraction, printed, dueOn }
}

/**
 * The day on which the meter reaches a count: between the readings around it, or ahead at its average of the days of use
 * in this stretch; unknown without two days, or past the calendar's end.
 */
function projectDate(
  pauses: MachineLog['pauses'],
  points: readonly MeterPoint[],
  due: number,
): DateText | undefined {
  const now = points.at(-1)
  if (now === undefined) return undefined
  const reached = now.count >= due
  let before: MeterPoint | undefined
  let after = now
  for (const point of points) {
    if (point.stretch !== now.stretch) continue
    if (point.count >= due) {
      after = point
      break
    }
    // Of the readings that fall short, the last one before a count that is reached, the first one for an average.
    if (before === undefined || reached) before = point
  }
  if (before === undefined) return reached ? dateFromDay(after.day) : undefined
  const days = after.day - before.day - (reached ? 0 : pauseDays(pauses, before.day, after.day))
  const rise = after.count - before.count
  if (!reached && (days <= 0 || rise <= 0)) return undefined
  const ahead = Math.ceil(((due - after.count) * days) / rise)
  const day = addToDay(afterDaysOfUse(pauses, after.day, ahead), 0, 0)
  return Number.isNaN(day) ? undefined : dateFromDay(day)
}
