import { dateOfDay } from '../calendar/dateOfDay.js'
import { FIRST_DAY, LAST_DAY } from '../calendar/dayNumberOf.js'
import type { Params, Reason } from '../finding.js'
import type { ChosenLimits } from './chooseLimits.js'
import type { DueCase } from './computeDue.js'
import type { DueOptions } from './dueQuestion.js'
import type { DueLine, MeterQuantity } from './dueVerdict.js'
import { followSchedule, type ScheduledPoint } from './followSchedule.js'
import { judgeLimit, soonPoint } from './judgeLimit.js'
import { COUNTS_PER_UNIT, meterCount } from './meterCount.js'
import type { MeterPoint, MeterWalk } from './meterWalk.js'
import { afterDaysOfUse, pauseDays } from './pauseDays.js'
import type { MeterLimit } from './readLimits.js'

const NO_LIMIT: MeterLimit = { counts: 0, printed: { value: 0, unit: 'h' } }

/** The line of a meter's limit. */
export function judgeMeter(
  due: DueCase,
  by: 'hours' | 'distance',
  limits: ChosenLimits,
  meter: MeterWalk | undefined,
): DueLine {
  const { completions, reasons, missing, options, question } = due
  const last = completions[completions.length - 1]
  const first = limits.first?.[by]
  const repeat = limits.repeat[by]
  const limit = (last === undefined ? first : undefined) ?? repeat ?? NO_LIMIT
  if (meter === undefined) {
    reasons.push({ code: 'interval/not-tracked', params: { meter: by } })
    return { by, state: 'not tracked', limit: limitQuantity(limit) }
  }
  for (const { code, severity, params } of meter.findings) {
    if (severity === 'error') reasons.push({ code, params })
  }
  const { points, unit } = meter
  const now = points[points.length - 1]
  const of = last !== undefined ? 'last service' : due.rebuilt ? 'rebuild' : 'first use'
  const startDate = last !== undefined ? last.date : due.zeroDate
  const start =
    last !== undefined
      ? pointAt(points, last.day, last.record)
      : due.rebuilt
        ? pointAt(points, due.zeroDay, -1)
        : ZERO
  const lack = findLack(by, limit, now, start, of, startDate, meter)
  if (now === undefined || start === undefined || lack !== undefined) {
    if (lack !== undefined) missing.push(lack)
    return { by, state: 'cannot tell', limit: limitQuantity(limit) }
  }

  const { countFrom } = question.intervals
  const window = limits.window[by]?.counts ?? 0
  let dueCount = start.count + limit.counts
  let point: ScheduledPoint | undefined
  if (last !== undefined && countFrom !== 'completion' && repeat !== undefined) {
    point = followMeterSchedule(due, by, limits, points, now, first ?? repeat, repeat)
    if (Number.isNaN(point.due)) {
      const params = { meter: by, of: 'schedule', date: completions[0]?.date ?? '' }
      missing.push({ code: 'interval/reading-at-start-missing', params })
      return { by, state: 'cannot tell', limit: limitQuantity(limit) }
    }
    dueCount = point.due
  }
  const age = due.today - now.day - pauseDays(question.log.pauses, now.day, due.today)
  const stale = age > options.staleAfter.days
  const overdueAfter = limits.windowKnown ? dueCount + window : Number.POSITIVE_INFINITY
  const soonFrom = soonPoint(
    start.count,
    dueCount,
    soonCounts(options, by),
    options.soon.fraction ?? Number.POSITIVE_INFINITY,
  )
  const state = judgeLimit(now.count, dueCount, overdueAfter, soonFrom, stale)

  const perUnit = COUNTS_PER_UNIT[unit]
  // Points are told as today's display shows them: what was counted on earlier displays is taken off again.
  const earlier = now.count - now.shown
  const from = { value: start.shown / perUnit, unit }
  const line: { -readonly [Key in keyof DueLine]: DueLine[Key] } = {
    by,
    state,
    since: of,
    from: startDate === undefined ? { meter: from } : { date: startDate, meter: from },
    limit: limitQuantity(limit),
    used: { value: (now.count - start.count) / perUnit, unit },
    left: { value: (dueCount - now.count) / perUnit, unit },
    duePoint: { meter: { value: (dueCount - earlier) / perUnit, unit } },
    now: { date: now.date, meter: { value: now.shown / perUnit, unit } },
    fraction: dueCount > start.count ? (now.count - start.count) / (dueCount - start.count) : 1,
    printed: limit.printed,
  }
  const dueDay = projectDay(question.log, points, now, dueCount)
  if (dueDay !== undefined) line.dueOn = dateOfDay(dueDay)
  reasons.push(lineReason('interval/by-meter', line))
  if (overdueAfter !== dueCount && limits.windowKnown) {
    const until = { value: (overdueAfter - earlier) / perUnit, unit }
    line.overdueAfter = { meter: until }
    if (state === 'due') reasons.push({ code: 'interval/window-left', params: { until } })
  }
  if (point?.note !== undefined && point.notedPoint !== undefined) {
    const noted = { value: (point.notedPoint - earlier) / perUnit, unit }
    reasons.push({ code: `interval/${point.note}`, params: { by, date: startDate ?? '', point: noted } })
  }
  if (stale && now.count < dueCount) {
    const params = { meter: by, date: now.date, days: age, staleAfter: options.staleAfter.days }
    ;(state === 'cannot tell' ? missing : reasons).push({ code: 'interval/reading-stale', params })
  }
  return line
}

/** A line is its own reason's material: one object, told twice. */
export function lineReason(code: 'interval/by-meter' | 'interval/by-date', line: DueLine): Reason {
  return { code, params: line as unknown as Params }
}

/** The machine's zero. */
const ZERO = { count: 0, shown: 0, stretch: 0 }

/** What keeps the line from being told, if anything. */
function findLack(
  by: 'hours' | 'distance',
  limit: MeterLimit,
  now: MeterPoint | undefined,
  start: Pick<MeterPoint, 'stretch'> | undefined,
  of: string,
  startDate: string | undefined,
  { points }: MeterWalk,
): Reason | undefined {
  if (limit.counts === 0) return { code: 'interval/limit-not-above-zero', params: { by } }
  if (now === undefined) return { code: 'interval/reading-missing', params: { meter: by } }
  if (start === undefined) {
    return { code: 'interval/reading-at-start-missing', params: { meter: by, of, date: startDate ?? '' } }
  }
  if (start.stretch === now.stretch) return undefined
  const from = points.findLast((point) => point.stretch < now.stretch) ?? now
  const to = points.find((point) => point.stretch === now.stretch) ?? now
  return { code: 'interval/meter-broken', params: { meter: by, from: from.date, to: to.date } }
}

/** Quantities in a line are numbers; the manual's printed digits stand in `printed`. */
function limitQuantity({ printed }: MeterLimit): MeterQuantity {
  return typeof printed.value === 'number'
    ? { value: printed.value, unit: printed.unit }
    : { value: Number(printed.value), unit: printed.unit }
}

function soonCounts({ soon }: DueOptions, by: 'hours' | 'distance'): number {
  if (by === 'hours') return soon.hours === undefined ? Number.NEGATIVE_INFINITY : meterCount(soon.hours, 'h')
  return soon.distance === undefined
    ? Number.NEGATIVE_INFINITY
    : meterCount(soon.distance.value, soon.distance.unit)
}

function followMeterSchedule(
  due: DueCase,
  by: 'hours' | 'distance',
  limits: ChosenLimits,
  points: readonly MeterPoint[],
  now: MeterPoint,
  opening: MeterLimit,
  repeat: MeterLimit,
): ScheduledPoint {
  const countAt = (point: Pick<MeterPoint, 'count' | 'stretch'> | undefined): number =>
    point?.stretch === now.stretch ? point.count : Number.NaN
  const window = limits.window[by]
  const zero = due.rebuilt ? pointAt(points, due.zeroDay, -1) : ZERO
  const { countFrom } = due.question.intervals
  return followSchedule(
    countFrom === 'schedule' ? countFrom : 'schedule inside window',
    countAt(zero),
    due.completions.map(({ day, record }) => countAt(pointAt(points, day, record))),
    {
      point: (anchor, withFirst, times) => anchor + (withFirst ? opening.counts : 0) + repeat.counts * times,
      late: (at) => at + (window?.counts ?? 0),
      early: (at) => (window === undefined ? Number.NaN : at - window.counts),
    },
  )
}

/** The reading that a record took, else the smallest of its day: the earlier due point is the safe one. */
function pointAt(points: readonly MeterPoint[], day: number, record: number): MeterPoint | undefined {
  let sameDay: MeterPoint | undefined
  for (let index = points.length - 1; index >= 0; index--) {
    const point = points[index]
    if (point === undefined || point.day < day) break
    if (point.day > day) continue
    if (point.list === 'records' && point.index === record) return point
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
