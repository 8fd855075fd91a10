import { addToDay } from '../calendar/addToDay.js'
import { dateOfDay } from '../calendar/dateOfDay.js'
import type { ChosenLimits } from './chooseLimits.js'
import type { DueCase } from './computeDue.js'
import type { DueLine } from './dueVerdict.js'
import { followSchedule, type ScheduledPoint } from './followSchedule.js'
import { judgeLimit, soonPoint } from './judgeLimit.js'
import { lineReason } from './judgeMeter.js'
import type { PeriodLimit } from './readLimits.js'

const NO_PERIOD: PeriodLimit = { months: 0, days: 0, printed: 'P0D' }

/** The line of a calendar limit. Points are counted from their start, never from the last point. */
export function judgePeriod(due: DueCase, limits: ChosenLimits): DueLine {
  const { completions, today, reasons, missing, zeroDay } = due
  const last = completions[completions.length - 1]
  const first = limits.first?.period
  const repeat = limits.repeat.period
  const limit = (last === undefined ? first : undefined) ?? repeat ?? NO_PERIOD
  const unknown: DueLine = { by: 'period', state: 'cannot tell', limit: { period: limit.printed } }
  if (Number.isNaN(limit.months)) return unknown
  if (limit.months === 0 && limit.days === 0) {
    missing.push({ code: 'interval/limit-not-above-zero', params: { by: 'period' } })
    return unknown
  }
  const start = last === undefined ? zeroDay : last.day
  if (Number.isNaN(start)) {
    missing.push({ code: 'interval/first-use-missing', params: {} })
    return unknown
  }
  let point: ScheduledPoint
  const { countFrom } = due.question.intervals
  if (last === undefined || countFrom === 'completion' || repeat === undefined) {
    point = { due: addToDay(start, limit.months, limit.days) }
  } else if (Number.isNaN(zeroDay)) {
    missing.push({ code: 'interval/first-use-missing', params: {} })
    return unknown
  } else {
    const opening = first ?? repeat
    const window = limits.window.period
    point = followSchedule(
      countFrom,
      zeroDay,
      completions.map((completion) => completion.day),
      {
        point: (anchor, withFirst, times) =>
          withFirst
            ? addToDay(anchor, opening.months + repeat.months * times, opening.days + repeat.days * times)
            : addToDay(anchor, repeat.months * times, repeat.days * times),
        late: (at) => (window === undefined ? at : addToDay(at, window.months, window.days)),
        early: (at) => (window === undefined ? Number.NaN : addToDay(at, -window.months, -window.days)),
      },
    )
  }
  if (Number.isNaN(point.due)) {
    missing.push({
      code: 'interval/due-date-out-of-calendar',
      params: { period: limit.printed, from: dateOfDay(start) },
    })
    return unknown
  }
  const window = limits.window.period
  const past = window === undefined ? point.due : addToDay(point.due, window.months, window.days)
  const overdueAfter = limits.windowKnown && !Number.isNaN(past) ? past : Number.POSITIVE_INFINITY
  const { soon } = due.options
  const soonFrom = soonPoint(
    start,
    point.due,
    soon.days ?? Number.NEGATIVE_INFINITY,
    soon.fraction ?? Number.POSITIVE_INFINITY,
  )
  const state = judgeLimit(today, point.due, overdueAfter, soonFrom, false)
  const from = last === undefined ? (due.zeroDate ?? '') : last.date
  const dueOn = dateOfDay(point.due)
  const of = last === undefined ? (due.rebuilt ? 'rebuild' : 'first use') : 'last service'
  const line: { -readonly [Key in keyof DueLine]: DueLine[Key] } = {
    by: 'period',
    state,
    since: of,
    from: { date: from },
    limit: { period: limit.printed },
    used: { value: today - start, unit: 'd' },
    left: { value: point.due - today, unit: 'd' },
    duePoint: { date: dueOn },
    now: { date: due.question.today },
    fraction: point.due > start ? (today - start) / (point.due - start) : 1,
    dueOn,
  }
  reasons.push(lineReason('interval/by-date', line))
  if (last !== undefined && point.note !== undefined && point.notedPoint !== undefined) {
    reasons.push({
      code: `interval/${point.note}`,
      params: { by: 'period', date: from, point: dateOfDay(point.notedPoint) },
    })
  }
  if (past === point.due || !Number.isFinite(overdueAfter)) return line
  const until = dateOfDay(past)
  if (state === 'due') reasons.push({ code: 'interval/window-left', params: { until } })
  line.overdueAfter = { date: until }
  return line
}
