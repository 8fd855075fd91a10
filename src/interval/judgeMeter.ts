import { dateOfDay } from '../calendar/dateOfDay.js'
import { FIRST_DAY, LAST_DAY } from '../calendar/dayNumberOf.js'
import type { AccumulatedMeter, MeterPoint } from './accumulateMeter.js'
import type { ChosenLimits } from './chooseLimits.js'
import type { DueCase } from './computeDue.js'
import type { DueLine } from './dueVerdict.js'
import { followSchedule, type ScheduledPoint } from './followSchedule.js'
import { judgeLimit, soonPoint } from './judgeLimit.js'
import { COUNTS_PER_UNIT, meterCount } from './meterCount.js'
import { afterDaysOfUse, pauseDays } from './pauseDays.js'
import type { MeterLimit } from './readLimits.js'

const NO_LIMIT: MeterLimit = { counts: 0, printed: { value: 0, unit: 'h' } }

/** The line of a meter's limit. */
export function judgeMeter(
  due: DueCase,
  by: 'hours' | 'distance',
  limits: ChosenLimits,
  meter: AccumulatedMeter | undefined,
): DueLine {
  const { completions, today, reasons, missing, options } = due
  const last = completions[completions.length - 1]
  const first = limits.first?.[by]
  const repeat = limits.repeat[by]
  const limit = (last === undefined ? first : undefined) ?? repeat ?? NO_LIMIT
  // Quantities in a line are numbers; the manual's printed digits stand in the reasons.
  const printed = { value: Number(limit.printed.value), unit: limit.printed.unit }
  if (meter === undefined) {
    reasons.push({ code: 'interval/not-tracked', params: { meter: by } })
    return { by, state: 'not tracked', limit: printed }
  }
  const unknown: DueLine = { by, state: 'cannot tell', limit: printed }
  if (limit.counts === 0) {
    missing.push({ code: 'interval/limit-not-above-zero', params: { by } })
    return unknown
  }
  const { points, unit } = meter
  for (const { code, severity, params } of meter.findings) {
    if (severity === 'error') reasons.push({ code, params })
  }
  const now = points[points.length - 1]
  if (now === undefined) {
    missing.push({ code: 'interval/reading-missing', params: { meter: by } })
    return unknown
  }
  const of = last === undefined ? (due.rebuilt ? 'rebuild' : 'first use') : 'last service'
  const startDay = last === undefined ? due.zeroDay : last.day
  let start = 0
  let startShown = 0
  let startStretch = 0
  if (last !== undefined || due.rebuilt) {
    const point = pointAt(points, startDay, last === undefined ? -1 : last.record)
    if (point === undefined) {
      missing.push({
        code: 'interval/reading-at-start-missing',
        params: { meter: by, of, date: dateOfDay(startDay) },
      })
      return unknown
    }
    start = point.count
    startShown = point.shown
    startStretch = point.stretch
  }
  if (startStretch !== now.stretch) {
    const from = points.findLast((point) => point.stretch < now.stretch) ?? now
    const to = points.find((point) => point.stretch === now.stretch) ?? now
    missing.push({
      code: 'interval/meter-broken',
      params: { meter: by, from: dateOfDay(from.day), to: dateOfDay(to.day) },
    })
    return unknown
  }
  const { countFrom } = due.question.intervals
  const window = limits.window[by]
  let point: ScheduledPoint
  if (last === undefined || countFrom === 'completion' || repeat === undefined) {
    point = { due: start + limit.counts }
  } else {
    const zero = due.rebuilt ? pointAt(points, due.zeroDay, -1) : undefined
    const opening = (first ?? repeat).counts
    const zeroKnown = due.rebuilt ? zero?.stretch === now.stretch : now.stretch === 0
    point = followSchedule(
      countFrom,
      zeroKnown ? (zero?.count ?? 0) : Number.NaN,
      completions.map((completion) => {
        const at = pointAt(points, completion.day, completion.record)
        return at?.stretch === now.stretch ? at.count : Number.NaN
      }),
      {
        point: (anchor, withFirst, times) => anchor + (withFirst ? opening : 0) + repeat.counts * times,
        late: (at) => at + (window?.counts ?? 0),
        early: (at) => (window === undefined ? Number.NaN : at - window.counts),
      },
    )
    if (Number.isNaN(point.due)) {
      missing.push({
        code: 'interval/reading-at-start-missing',
        params: { meter: by, of: 'schedule', date: dateOfDay(completions[0]?.day ?? startDay) },
      })
      return unknown
    }
  }
  const { log } = due.question
  const age = today - now.day - pauseDays(log.pauses, now.day, today)
  const stale = age > options.staleAfter.days
  const { soon } = options
  const before =
    by === 'hours'
      ? soon.hours === undefined
        ? Number.NEGATIVE_INFINITY
        : meterCount(soon.hours, 'h')
      : soon.distance === undefined
        ? Number.NEGATIVE_INFINITY
        : meterCount(soon.distance.value, soon.distance.unit)
  const overdueAfter = limits.windowKnown ? point.due + (window?.counts ?? 0) : Number.POSITIVE_INFINITY
  const soonFrom = soonPoint(start, point.due, before, soon.fraction ?? Number.POSITIVE_INFINITY)
  const state = judgeLimit(now.count, point.due, overdueAfter, soonFrom, stale)

  const perUnit = COUNTS_PER_UNIT[unit]
  const readOn = dateOfDay(now.day)
  // Points are told as today's display shows them: what was counted on earlier displays is taken off again.
  const earlier = now.count - now.shown
  const from = { value: startShown / perUnit, unit }
  const dueAt = { value: (point.due - earlier) / perUnit, unit }
  const shown = { value: now.shown / perUnit, unit }
  const left = { value: (point.due - now.count) / perUnit, unit }
  const date = Number.isNaN(startDay) ? undefined : dateOfDay(startDay)
  const params = { meter: by, limit: limit.printed, of, from, dueAt, now: shown, readOn, left, state }
  reasons.push({ code: 'interval/by-meter', params: date === undefined ? params : { ...params, date } })
  if (point.note !== undefined && point.notedPoint !== undefined) {
    reasons.push({
      code: `interval/${point.note}`,
      params: { by, date: date ?? '', point: { value: (point.notedPoint - earlier) / perUnit, unit } },
    })
  }
  if (stale && state !== 'overdue' && state !== 'due') {
    const params = { meter: by, date: readOn, days: age, staleAfter: options.staleAfter.days }
    const reason = { code: 'interval/reading-stale', params }
    if (state === 'cannot tell') missing.push(reason)
    else reasons.push(reason)
  }
  const dueDay = projectDay(log, points, now, point.due)
  const line: {
    -readonly [Key in keyof DueLine]: DueLine[Key]
  } = {
    by,
    state,
    from: date === undefined ? { meter: from } : { date, meter: from },
    limit: printed,
    used: { value: (now.count - start) / perUnit, unit },
    left,
    duePoint: { meter: dueAt },
    now: { date: readOn, meter: shown },
    fraction: point.due > start ? (now.count - start) / (point.due - start) : 1,
  }
  if (dueDay !== undefined) line.dueOn = dateOfDay(dueDay)
  if (overdueAfter !== point.due && Number.isFinite(overdueAfter)) {
    const until = { value: (overdueAfter - earlier) / perUnit, unit }
    line.overdueAfter = { meter: until }
    if (state === 'due') reasons.push({ code: 'interval/window-left', params: { until } })
  }
  return line
}

/** The reading that a record took, else the smallest of its day: the earlier due point is the safe one. */
function pointAt(points: readonly MeterPoint[], day: number, record: number): MeterPoint | undefined {
  let sameDay: MeterPoint | undefined
  for (let index = points.length - 1; index >= 0; index--) {
    const point = points[index]
    if (point === undefined || point.day < day) break
    if (point.day > day) continue
    if (record >= 0 && point.record === record) return point
    sameDay = point
  }
  return sameDay
}

/**
 * The day on which the meter reaches a count: between the readings around it, or ahead at its average of the days of use
 * in this stretch; unknown without two days.
 */
function projectDay(
  log: DueCase['question']['log'],
  points: readonly MeterPoint[],
  now: MeterPoint,
  due: number,
): number | undefined {
  let before: MeterPoint | undefined
  let after = now
  for (const point of points) {
    if (point.stretch !== now.stretch) continue
    if (point.count >= due) {
      after = point
      break
    }
    // Of the readings that fall short, the last one before a count that is reached, the first one for an average.
    if (before === undefined || now.count >= due) before = point
  }
  if (before === undefined) return now.count >= due ? after.day : undefined
  const reached = now.count >= due
  const days = after.day - before.day - (reached ? 0 : pauseDays(log.pauses, before.day, after.day))
  const rise = after.count - before.count
  if (reached && days === 0) return after.day
  if (days <= 0 || rise <= 0) return undefined
  const ahead = Math.ceil(((due - after.count) * days) / rise)
  const day = afterDaysOfUse(log.pauses, after.day, ahead)
  return day >= FIRST_DAY && day <= LAST_DAY ? day : undefined
}
