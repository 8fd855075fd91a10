import { type Reason, refuse, requireKnownKeys, requireShape, type Shape } from '../base/index.js'
import { type DateText, dayNumberOf } from '../calendar/index.js'
import { accumulateMeter, sortByDay } from './accumulateMeter.js'
import { chooseLimits } from './chooseLimits.js'
import { intervalReason } from './codes.js'
import type { CountOrigin, DueCase } from './dueCase.js'
import type { DueReaders } from './dueReaders.js'
import type { DueLine, DueVerdict } from './dueVerdict.js'
import type { DueOptions, IntervalFacts } from './intervalFacts.js'
import { judgeLimit } from './judgeLimit.js'
import { LOG_SHAPE } from './logShape.js'
import { LIMIT_NAMES, readLimits } from './readLimits.js'
import { requireDueOptions } from './requireDueOptions.js'

const FACT_KEYS = ['intervals', 'log', 'service', 'doneBy', 'gearcase', 'instance', 'events', 'today']

/** The parts of the facts that this function reads. */
export const FACTS_SHAPE: Shape = {
  intervals: { 'first?': {}, repeat: {}, 'window?': {}, 'severe?': {} },
  log: LOG_SHAPE,
}

/**
 * Decides whether one service of one gearcase (or instance) is due. For a whole fleet, use
 * {@link computeDueColumns}; for the date on which it will be due, use {@link forecastDue}.
 *
 * Every entry of the log counts: pass the log from `resolveLog`, which applies corrections and removes work that was
 * not done.
 *
 * Due if start + interval ≤ now; overdue past interval + window; by whichever limit comes first. The verdict is the first of
 * these that any limit has: overdue, due, cannot tell, due soon, not due. Meters are compared in whole 1/1000 h and µm, dates
 * in whole days.
 *
 * @param facts - the resolved intervals, the machine's log, the service, gearcase and instance, and today's
 *   date
 * @param options - when a service is due soon, how old a reading may be, normal or severe use; all required,
 *   `soon` may be `{}`
 * @returns the verdict, one line for each limit, the limit that comes first and why, all reasons, and the
 *   missing facts
 * @throws TypeError, RangeError if an option is missing, unknown or out of range, `today` is not a date, a
 *   figure cannot be read, or a part of the facts is not an object or list
 *
 * Source: house rule for the verdicts and their order. Months as in ECMAScript test262 (see {@link addPeriod}).
 *
 * @example
 * ```ts
 * // Every 100 h, last done at 412 h; the meter shows 519.4 h. Is it due?
 * import { computeDue } from 'drivetrain-service/v1/interval'
 * const sheet = { id: 'tind', revision: '1' }
 * const done = { service: 'change', gearcase: 'rear', opened: [], tightened: [], seals: [] }
 * const log = {
 *   kind: 'machine-log', version: '1.0', id: 'two', name: 'Two', sheet, identity: {},
 *   meters: { hours: { unit: 'h', readings: [{ date: '2031-03-02', value: 519.4 }] } },
 *   records: [{
 *     kind: 'service-record', version: '1.0', id: 'r1', machine: 'two', sheet, detail: 'date and meters only',
 *     date: '2031-01-12', readings: { hours: { value: 412, unit: 'h' } }, entries: [done],
 *   }],
 * } as const
 * const repeat = {
 *   kind: 'stated', value: { kind: 'interval', hours: '100' }, trace: { path: '/services/change', reasons: [] },
 * } as const
 * const verdict = computeDue(
 *   { intervals: { repeat, countFrom: 'completion' }, log, service: 'change', gearcase: 'rear', today: '2031-03-03' },
 *   { soon: {}, staleAfter: { days: 30 }, severity: 'normal' },
 * )
 * verdict.verdict // => 'overdue'
 * ```
 */
export function computeDue(facts: IntervalFacts, options: DueOptions): DueVerdict {
  requireDueOptions(options)
  try {
    requireKnownKeys('facts', facts, FACT_KEYS)
    return judgeService(facts, options, { meters: accumulateMeter, limits: readLimits })
  } catch (error) {
    requireShape('facts', facts, FACTS_SHAPE)
    throw error
  }
}

/** {@link computeDue} without a check of its arguments. */
export function judgeService(facts: IntervalFacts, options: DueOptions, readers: DueReaders): DueVerdict {
  const { log, gearcase, intervals } = facts
  const today = dayNumberOf(facts.today)
  if (Number.isNaN(today)) throw refuse('facts.today', facts.today, 'a date YYYY-MM-DD', 'string')
  const reasons: Reason[] = []
  const missing: Reason[] = []
  const lines: DueLine[] = []

  const { commissioned, events = [] } = log
  let completions = findCompletions(facts, today, reasons)
  const firstDay = dayNumberOf(commissioned)
  const firstDate = Number.isNaN(firstDay) ? '' : (commissioned as DateText)
  let origin: CountOrigin = { since: 'first use', day: firstDay, date: firstDate, record: -1 }
  const lastDoneDay = completions.at(-1)?.day ?? NaN
  for (const event of events) {
    if ('meter' in event || event.gearcases?.includes(gearcase) === false) continue
    const { kind, date } = event
    const day = readPastDay(date, today, kind, reasons)
    if (Number.isNaN(day)) continue
    if (!(day <= lastDoneDay) && facts.events?.includes(kind)) {
      lines.push({ by: 'event', verdict: 'due', from: { date }, duePoint: { date }, dueOn: date })
      reasons.push(intervalReason('interval/by-event', { event: kind, date }))
    }
    if (kind === 'rebuild' && intervals.first !== undefined && !(origin.since === kind && day <= origin.day))
      origin = { since: kind, day, date, record: -1 }
  }
  if (origin.since === 'rebuild') completions = completions.filter(({ day }) => day > origin.day)

  const start = completions.at(-1) ?? origin
  // A schedule is counted from its first point, even after completions.
  const isFirstNeeded = start === origin || intervals.countFrom !== 'completion'
  const limits = chooseLimits(intervals, options.severity, isFirstNeeded, reasons, missing, readers.limits)
  if (limits) {
    const due: DueCase = {
      facts,
      options,
      readers,
      today,
      limits,
      completions,
      origin,
      start,
      reasons,
      missing,
    }
    const currentLimits = start === origin ? limits.opening : limits.repeat
    for (const by of LIMIT_NAMES) {
      const limit = currentLimits[by]
      if (limit) lines.push(judgeLimit(due, by, limit))
    }
  }
  return combineLines(lines, limits !== undefined, reasons, missing)
}

/** In rising order: the highest of all lines is the verdict. Lines that are not tracked are left out. */
const VERDICT_ORDER = ['not due', 'due soon', 'cannot tell', 'due', 'overdue'] as const

/**
 * Combines all lines into one verdict. An event comes before every limit. The first limit is the one with the
 * earliest day if all days are known, otherwise the one with the largest fraction used. Limits that are
 * unknown or not tracked are left out.
 */
function combineLines(
  lines: readonly DueLine[],
  hasLimits: boolean,
  reasons: Reason[],
  missing: Reason[],
): DueVerdict {
  let worstRank = hasLimits ? -1 : VERDICT_ORDER.indexOf('cannot tell')
  let earliestLine: DueLine | undefined
  let mostUsedLine: DueLine | undefined
  let lineCount = 0
  let areAllDaysKnown = true
  for (const line of lines) {
    const { dueOn, fraction } = line
    worstRank = Math.max(worstRank, VERDICT_ORDER.indexOf(line.verdict as DueVerdict['verdict']))
    if (fraction === undefined) continue
    lineCount++
    if (!dueOn) areAllDaysKnown = false
    else if (!earliestLine?.dueOn || dueOn < earliestLine.dueOn) earliestLine = line
    if (mostUsedLine?.fraction === undefined || fraction > mostUsedLine.fraction) mostUsedLine = line
  }
  const verdict = VERDICT_ORDER[worstRank]
  if (!verdict) missing.push(intervalReason('interval/no-limit-tracked', {}))
  const [event] = lines
  const isEvent = event?.by === 'event'
  const first = isEvent ? event : areAllDaysKnown ? earliestLine : mostUsedLine
  // Every other verdict comes from a line that has a fraction or is an event.
  if (!verdict || !first) return { verdict: 'cannot tell', lines, reasons, missing }
  const { by: dueBy, dueOn } = first
  const decidedBy = isEvent
    ? 'event'
    : lineCount === 1
      ? 'only limit'
      : areAllDaysKnown
        ? 'days'
        : 'fraction used'
  // Hot path: no spread.
  if (!isEvent && lineCount > 1) {
    const params = dueOn ? { by: dueBy, decidedBy, dueOn } : { by: dueBy, decidedBy }
    reasons.push(intervalReason('interval/governing-limit', params))
  }
  return dueOn
    ? { verdict, lines, dueBy, decidedBy, dueOn, reasons, missing }
    : { verdict, lines, dueBy, decidedBy, reasons, missing }
}

/** Completions of the service on this gearcase and instance, oldest first. Records after today are reported, not counted. */
function findCompletions(facts: IntervalFacts, today: number, reasons: Reason[]): CountOrigin[] {
  const { service, doneBy, gearcase, instance, log } = facts
  const completions: CountOrigin[] = []
  let record = -1
  for (const { id, date, entries } of log.records) {
    record++
    // The first entry of this service, or of one that counts as it, on this gearcase and instance.
    const entry = entries.find(
      (candidate) =>
        candidate.gearcase === gearcase &&
        (candidate.service === service || doneBy?.includes(candidate.service)) &&
        (candidate.instance === undefined || candidate.instance === instance),
    )
    if (!entry) continue
    const day = readPastDay(date, today, id, reasons)
    if (Number.isNaN(day)) continue
    if (instance !== undefined && entry.instance === undefined)
      reasons.push(intervalReason('interval/record-for-all-instances', { date, instance }))
    if (entry.service !== service)
      reasons.push(intervalReason('interval/done-by-other-service', { date, service: entry.service }))
    completions.push({ since: 'last service', day, date, record })
  }
  sortByDay(completions)
  return completions
}

/** The day of an event or record; NaN if it is not a date or is after today; the latter adds a reason. */
function readPastDay(date: DateText, today: number, source: string, reasons: Reason[]): number {
  const day = dayNumberOf(date)
  if (!(day > today)) return day
  reasons.push(intervalReason('interval/date-in-the-future', { what: source, date }))
  return NaN
}
