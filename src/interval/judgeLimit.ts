import type { Params, Reason } from '../base/index.js'
import type { DueCase } from './computeDue.js'
import type { DueLine } from './dueVerdict.js'
import { followSchedule } from './followSchedule.js'
import { isSoon } from './isSoon.js'
import { addOnScale, tellPlace } from './limitScale.js'
import { readCalendar } from './readCalendar.js'
import { type Limit, type Limits, limitOf } from './readLimits.js'
import { readMeterScale } from './readMeterScale.js'
import { writeLine } from './writeLine.js'

/**
 * The line of one limit, on its scale. Due at the point itself; overdue past the point and its window; soon at the soon point
 * itself. A reading that is too old still shows `due soon`, never `not due`.
 */
export function judgeLimit(due: DueCase, by: keyof Limits, limit: Limit): DueLine {
  const { question, options, limits, completions, start, reasons } = due
  const { staleAfter, soon } = options
  // A part of a month that a factor left is said already.
  if (Number.isNaN(limit.months)) return { by, verdict: 'cannot tell', limit: limit.told }
  const scale = by === 'period' ? readCalendar(due) : readMeterScale(due, by)
  if (scale === undefined) {
    reasons.push({ code: 'interval/not-tracked', params: { meter: by } })
    return { by, verdict: 'not tracked', limit: limit.told }
  }
  if (limit.months + limit.counts === 0)
    return lackFor(due, by, limit, { code: 'interval/limit-not-above-zero', params: { by } })
  if ('code' in scale) return lackFor(due, by, limit, scale)
  const isScheduled = completions.length > 0 && question.intervals.countFrom !== 'completion'
  const schedule = isScheduled ? followSchedule(due, by, limit, scale) : undefined
  const dueAt = schedule?.due ?? addOnScale(scale, scale.start, limit.months, limit.counts)
  if (Number.isNaN(dueAt)) return lackFor(due, by, limit, lackOfPoint(due, by, limit))

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
  // A line is its own reason's material: one object, told twice.
  const params = line as unknown as Params
  const told = reasons.push({ code: by === 'period' ? 'interval/by-date' : 'interval/by-meter', params })
  if (past > dueAt) {
    const until = tellPlace(scale, past)
    line.overdueAfter = until
    if (line.verdict === 'due')
      reasons.push({ code: 'interval/window-left', params: { until: until.date ?? until.meter } })
  }
  if (schedule?.note !== undefined) {
    const { date, meter } = tellPlace(scale, schedule.noted)
    // Of a date it is said before what is left of the window, of a meter after it.
    reasons.splice(by === 'period' ? told : reasons.length, 0, {
      code: `interval/${schedule.note}`,
      params: { by, date: start.date, point: date ?? meter },
    })
  }
  if (stale && now < dueAt) {
    const facts = { meter: by, date: scale.read.date, days: age, staleAfter: staleAfter.days }
    const list = line.verdict === 'cannot tell' ? due.missing : reasons
    list.push({ code: 'interval/reading-stale', params: facts })
  }
  return line
}

/** The line of a limit that nobody can tell, for a reason. */
function lackFor({ missing }: DueCase, by: keyof Limits, { told }: Limit, reason: Reason): DueLine {
  missing.push(reason)
  return { by, verdict: 'cannot tell', limit: told }
}

/** Why a limit has no due point: past the calendar's end, or a service of the schedule without a reading. */
function lackOfPoint({ completions, start }: DueCase, by: keyof Limits, { told }: Limit): Reason {
  if ('period' in told) {
    const params = { period: told.period, from: start.date }
    return { code: 'interval/due-date-out-of-calendar', params }
  }
  const params = { meter: by, of: 'schedule', date: completions[0]?.date ?? '' }
  return { code: 'interval/reading-at-start-missing', params }
}
