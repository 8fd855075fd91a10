import { dayNumberOf } from '../calendar/dayNumberOf.js'
import type { DateText } from '../calendar/index.js'
import { readDay } from '../calendar/readDay.js'
import type { Reason } from '../finding.js'
import { accumulateMeter } from './accumulateMeter.js'
import { checkDueOptions } from './checkDueOptions.js'
import { chooseLimits } from './chooseLimits.js'
import type { DueOptions, DueQuestion } from './dueQuestion.js'
import type { DueLine, DueState, DueVerdict } from './dueVerdict.js'
import { type Completion, findCompletions } from './findCompletions.js'
import { findFirstLimit } from './findFirstLimit.js'
import { judgeMeter } from './judgeMeter.js'
import { judgePeriod } from './judgePeriod.js'

/** What one judgement needs, worked out once for all its lines. */
export interface DueCase {
  readonly question: DueQuestion
  readonly options: DueOptions
  readonly today: number
  /** Completions that the count starts from: those after the rebuild, where `first` counts from one. */
  readonly completions: readonly Completion[]
  /** Day of the machine's or the rebuild's zero; NaN: not known. */
  readonly zeroDay: number
  readonly zeroDate: DateText | undefined
  readonly rebuilt: boolean
  readonly reasons: Reason[]
  readonly missing: Reason[]
}

/**
 * Whether one service of one gearcase (or instance) is due, for the technician who plans a visit. For a whole fleet in
 * columns see {@link computeDueColumns}; for the day on which it will fall due, with a band, {@link forecastDue}.
 *
 * Due at start + interval ≤ now; overdue past interval + window; whichever limit comes first. State: the first that holds
 * of overdue, due, cannot tell, due soon, not due. Meters are compared as whole 1/1000 h and µm, dates as whole days.
 *
 * @param question - the resolved intervals, the machine's log, which service, gearcase and instance, and today's date
 * @param options - what counts as soon, how old a reading may be, normal or severe use; all required, `soon` may be `{}`
 * @returns the state, one line a limit, which comes first and why, every reason, and what is missing
 * @throws TypeError, RangeError when an option is missing or out of range, `today` is no date, or a figure is no figure
 *
 * Source: house rule for the states and their order; months as in ECMAScript test262 (see {@link addPeriod}).
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
 * verdict.state // => 'overdue'
 * ```
 */
export function computeDue(question: DueQuestion, options: DueOptions): DueVerdict {
  if (typeof question !== 'object' || question === null) throw new TypeError('question must be an object')
  checkDueOptions(options)
  const { log, gearcase, intervals } = question
  const today = readDay(question.today, 'today')
  const reasons: Reason[] = []
  const missing: Reason[] = []
  const lines: DueLine[] = []

  const all = findCompletions(question, today, reasons)
  let zeroDay = log.commissioned === undefined ? Number.NaN : dayNumberOf(log.commissioned)
  let zeroDate = Number.isNaN(zeroDay) ? undefined : log.commissioned
  let completions = all
  let rebuilt = false
  if (log.events !== undefined) {
    const lastDone = all[all.length - 1]?.day ?? Number.NEGATIVE_INFINITY
    for (const event of log.events) {
      if ('meter' in event || (event.gearcases !== undefined && !event.gearcases.includes(gearcase))) continue
      const day = dayNumberOf(event.date)
      const { kind, date } = event
      if (day > today) reasons.push({ code: 'interval/in-the-future', params: { what: kind, date } })
      if (!(day <= today)) continue
      if (day > lastDone && question.events?.includes(kind)) {
        lines.push({ by: 'event', state: 'due', from: { date }, duePoint: { date }, dueOn: date })
        reasons.push({ code: 'interval/by-event', params: { event: kind, date } })
      }
      if (kind === 'rebuild' && intervals.first !== undefined && !(rebuilt && day <= zeroDay)) {
        zeroDay = day
        zeroDate = date
        rebuilt = true
      }
    }
    if (rebuilt) completions = all.filter((completion) => completion.day > zeroDay)
  }

  const limits = chooseLimits(
    intervals,
    options.severity,
    needsFirst(question, completions.length),
    reasons,
    missing,
  )
  if (limits !== undefined) {
    const due: DueCase = {
      question,
      options,
      today,
      completions,
      zeroDay,
      zeroDate,
      rebuilt,
      reasons,
      missing,
    }
    const { first, repeat } = limits
    const hours = (completions.length === 0 ? first : undefined)?.hours ?? repeat.hours
    if (hours !== undefined)
      lines.push(judgeMeter(due, 'hours', limits, accumulateMeter(log, 'hours', today)))
    const distance = (completions.length === 0 ? first : undefined)?.distance ?? repeat.distance
    if (distance !== undefined)
      lines.push(judgeMeter(due, 'distance', limits, accumulateMeter(log, 'distance', today)))
    const period = (completions.length === 0 ? first : undefined)?.period ?? repeat.period
    if (period !== undefined) lines.push(judgePeriod(due, limits))
  }

  let worst = 5
  for (let index = 0; index < lines.length; index++) worst = Math.min(worst, rankOf(lines[index]?.state))
  if (limits === undefined && worst > CANNOT_TELL) worst = CANNOT_TELL
  if (worst === 5) {
    worst = CANNOT_TELL
    missing.push({ code: 'interval/no-limit-tracked', params: {} })
  }
  const state = STATES[worst] ?? 'cannot tell'
  const comes = findFirstLimit(lines)
  if (comes === undefined) return { state, lines, reasons, missing }
  const { dueBy, decidedBy, dueOn } = comes
  if (decidedBy !== 'only limit' && decidedBy !== 'event') {
    const params = dueOn === undefined ? { by: dueBy, decidedBy } : { by: dueBy, decidedBy, dueOn }
    reasons.push({ code: 'interval/which-first', params })
  }
  if (dueOn === undefined) return { state, lines, dueBy, decidedBy, reasons, missing }
  return { state, lines, dueBy, decidedBy, dueOn, reasons, missing }
}

const STATES: readonly DueState[] = ['overdue', 'due', 'cannot tell', 'due soon', 'not due']
const CANNOT_TELL = 2

/** Place of a state in `STATES`; a line that does not vote comes last. */
function rankOf(state: DueLine['state'] | undefined): number {
  if (state === 'not due') return 4
  if (state === 'overdue') return 0
  if (state === 'due') return 1
  if (state === 'due soon') return 3
  return state === 'cannot tell' ? CANNOT_TELL : 5
}

/** A schedule goes on counting from the first point after it was answered; a completion count does not. */
function needsFirst(question: DueQuestion, done: number): boolean {
  return done === 0 || question.intervals.countFrom !== 'completion'
}
