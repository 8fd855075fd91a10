import type { Reason } from '../base/index.js'
import { dropUndefined, refuse, requireKnownKeys, requireObject, requireShape } from '../base/index.js'
import { type DateText, dateFromDay, LAST_DAY, readDay } from '../calendar/index.js'
import { divide, type Exact } from '../quantity/index.js'
import type { MachineLog, MeterName } from '../spec/index.js'
import { accumulateMeter } from './accumulateMeter.js'
import { intervalReason } from './codes.js'
import { countPauseDays, findDayAfterUse } from './countPauseDays.js'
import {
  type Crossing,
  calculateExactMean,
  exactToCrossing,
  findExactSlope,
  findLineCrossing,
  makeExactRatio,
  toCrossing,
} from './crossing.js'
import type { MeterQuantity } from './dueVerdict.js'
import { calculateNormalDeviate, fitTheilSen, requireConfidence } from './fitTheilSen.js'
import { LOG_SHAPE } from './logShape.js'
import { countsPerUnit, meterCount } from './meterCount.js'

export interface ForecastFacts {
  readonly log: MachineLog
  readonly meter: MeterName
  /** The due point as a reading of today's display, from a line of `computeDue`. */
  readonly dueAt: MeterQuantity
  readonly today: DateText
}

export interface ForecastOptions {
  /** Probability that the true day is from early to late, above 0 and below 1; 0.8 is usual. */
  readonly confidence: number
  /**
   * The caller's noise model. `about a steady line`: the use is steady, and each reading differs
   * from it independently (Sen's limits of the slope). `from day to day`: the use itself changes, and every day adds to the
   * uncertainty.
   */
  readonly scatter: 'about a steady line' | 'from day to day'
}

export type Forecast =
  | {
      readonly verdict: 'forecast'
      readonly likely: DateText
      /** Absent with fewer than four readings: they do not show how uneven the use is. */
      readonly early?: DateText
      /** Absent for the same reason, or if the lower limit of the use is 0. */
      readonly late?: DateText
      readonly method: 'span rate' | 'Theil–Sen'
      readonly readings: number
      readonly perDay: MeterQuantity
      readonly reasons: readonly Reason[]
    }
  | { readonly verdict: 'reached'; readonly by: DateText; readonly reasons: readonly Reason[] }
  | { readonly verdict: 'cannot tell'; readonly reasons: readonly Reason[] }

/** If there are more readings, only the newest are used, to save time. */
const MAX_READINGS = 400

/**
 * Forecasts the dates on which a meter will reach its due point: early, likely and late. To find out whether
 * it is due today, use {@link computeDue}.
 *
 * Two or three readings: day = last + left / (rise / days of use). Four or more: Theil–Sen slope, with the
 * limits of the chosen `scatter`. Days in a pause are left out, past and future.
 *
 * @param facts - the log, the meter, the due point on today's display, and today's date
 * @param options - the confidence of the band and the noise model; both required
 * @returns a forecast, or the day on which the due point was reached, or the missing facts
 * @throws TypeError, RangeError if an argument is out of range
 *
 * Source: Sen 1968 for slope and limits. The day-to-day band is a house rule: the variance of a sum of independent
 * days, plus that of the slope. docs/intervals.md shows how often both bands are right.
 *
 * @example
 * ```ts
 * // 100 h in 50 days, 20 h to go: when?
 * import { forecastDue } from 'drivetrain-service/v1/interval/meters'
 * const readings = [{ date: '2031-01-01', value: 0 }, { date: '2031-02-20', value: 100 }]
 * const log = {
 *   kind: 'machine-log', version: '1.0', id: 'two', name: 'Two', sheet: { id: 'tind', revision: '1' }, identity: {},
 *   meters: { hours: { unit: 'h', readings } }, records: [],
 * } as const
 * const forecast = forecastDue(
 *   { log, meter: 'hours', dueAt: { value: 120, unit: 'h' }, today: '2031-02-20' },
 *   { confidence: 0.8, scatter: 'from day to day' },
 * )
 * forecast.verdict === 'forecast' && forecast.likely // => '2031-03-02'
 * ```
 */
export function forecastDue(facts: ForecastFacts, options: ForecastOptions): Forecast {
  requireKnownKeys('facts', facts, ['log', 'meter', 'dueAt', 'today'])
  requireKnownKeys('options', options, ['confidence', 'scatter'])
  requireConfidence('options.confidence', options.confidence)
  const { scatter } = options
  if (scatter !== 'about a steady line' && scatter !== 'from day to day')
    throw refuse('options.scatter', scatter, "'about a steady line' or 'from day to day'", 'string')
  const { meter, dueAt } = facts
  if (meter !== 'hours' && meter !== 'distance')
    throw refuse('facts.meter', meter, "'hours' or 'distance'", 'string')
  requireObject('facts.dueAt', dueAt)
  const { value, unit } = dueAt
  if (meter === 'hours' ? unit !== 'h' : unit !== 'km' && unit !== 'mi')
    throw refuse('facts.dueAt.unit', unit, meter === 'hours' ? 'h' : 'km or mi', 'string')
  if (typeof value !== 'number' || !Number.isSafeInteger(meterCount(value, unit)))
    throw refuse('facts.dueAt.value', value, 'a meter value', 'number')
  try {
    return forecastMeter(facts, options, readDay(facts.today, 'facts.today'))
  } catch (error) {
    requireShape('facts.log', facts.log, LOG_SHAPE)
    throw error
  }
}

function forecastMeter(
  { log, meter: name, dueAt }: ForecastFacts,
  { confidence, scatter }: ForecastOptions,
  today: number,
): Forecast {
  const cannotTell = (reason: Reason): Forecast => ({ verdict: 'cannot tell', reasons: [reason] })
  const meter = accumulateMeter(log, name, today)
  const now = meter?.points.at(-1)
  if (!meter || !now) return cannotTell(intervalReason('interval/reading-missing', { meter: name }))
  const due = meterCount(dueAt.value, dueAt.unit) + now.count - now.shown
  // The newest reading of each day.
  const points = meter.points
    .filter(({ stretch, day }, at) => stretch === now.stretch && meter.points[at + 1]?.day !== day)
    .slice(-MAX_READINGS)
  const reachedPoint = points.find((point) => point.count >= due)
  if (reachedPoint !== undefined)
    return { verdict: 'reached', by: dateFromDay(reachedPoint.day), reasons: [] }

  const origin = points[0] ?? now
  const days = points.map(
    (point) => point.day - origin.day - countPauseDays(log.pauses, origin.day, point.day),
  )
  const rises = points.map((point) => point.count - origin.count)
  const span = days.at(-1) ?? 0
  const rise = now.count - origin.count
  const readings = points.length
  if (readings < 2 || span <= 0 || rise <= 0)
    return cannotTell(intervalReason('interval/forecast-needs-readings', { meter: name, readings }))
  const left = due - now.count
  const reasons: Reason[] = []
  /** The date of a point in time, with pauses. */
  const findCrossingDate = ({ day }: Crossing): DateText | undefined => {
    const date = findDayAfterUse(log.pauses, now.day, day)
    return day >= 0 && date <= LAST_DAY ? dateFromDay(date) : undefined
  }
  const fit = readings >= 4 ? fitTheilSen(days, rises, confidence) : undefined
  const usesTheilSen = fit !== undefined && fit.slope > 0
  const slope = usesTheilSen
    ? calculateExactMean(fit.middle.map((slope) => findExactSlope(slope, days, rises)))
    : makeExactRatio(rise, span)
  let likely = exactToCrossing(divide(makeExactRatio(left, 1), slope))
  let early: Crossing | undefined
  let late: Crossing | undefined
  if (fit === undefined) {
    reasons.push(intervalReason('interval/forecast-without-band', { readings }))
  } else if (scatter === 'from day to day') {
    const dayRange = forecastDayRange(days, rises, span, left, confidence)
    // The ends of the band are rounded, but the likely day is exact. If they are almost equal, use the likely day.
    const toBandEnd = (days: number): Crossing =>
      Math.abs(days - likely.days) <= likely.days * 1e-12 ? likely : toCrossing(Math.max(days, 0))
    early = toBandEnd(dayRange.early)
    late = toBandEnd(dayRange.late)
    if (likely.days < early.days) likely = early
    if (likely.days > late.days) likely = late
  } else {
    const findCrossingAtSlope = (slope: Exact): Crossing =>
      findLineCrossing(slope, days, rises, rise + left, span)
    likely = findCrossingAtSlope(slope)
    early = fit.highSlope > 0 ? findCrossingAtSlope(findExactSlope(fit.highSlope, days, rises)) : likely
    late =
      fit.lowSlope > 0
        ? findCrossingAtSlope(findExactSlope(fit.lowSlope, days, rises))
        : toCrossing(Number.POSITIVE_INFINITY)
    if (early.days > late.days) [early, late] = [late, early]
    // The last reading shows that the point is not reached yet.
    if (early.days < 0) {
      reasons.push(intervalReason('interval/forecast-contradicted', { date: dateFromDay(now.day) }))
      early = toCrossing(0)
      if (likely.days < 0) likely = early
      if (late.days < 0) late = early
    }
  }
  const likelyDate = findCrossingDate(likely)
  if (likelyDate === undefined)
    return cannotTell(intervalReason('interval/forecast-beyond-calendar', { meter: name }))
  const lateDate = late && findCrossingDate(late)
  if (late && !lateDate) reasons.push(intervalReason('interval/forecast-without-end', {}))
  return dropUndefined({
    verdict: 'forecast',
    likely: likelyDate,
    early: early && findCrossingDate(early),
    late: lateDate,
    method: usesTheilSen ? 'Theil–Sen' : 'span rate',
    readings,
    perDay: { value: (usesTheilSen ? fit.slope : rise / span) / countsPerUnit(meter.unit), unit: meter.unit },
    reasons,
  })
}

/**
 * Early and late if the use of each day is independent of the others: the sum of h days has the variance σ²·h, and the rate
 * from T days of readings adds σ²·h²/T. σ² comes from the gaps between readings.
 */
function forecastDayRange(
  days: readonly number[],
  rises: readonly number[],
  span: number,
  left: number,
  confidence: number,
): { readonly early: number; readonly late: number } {
  const rate = (rises.at(-1) ?? 0) / span
  let sum = 0
  let gaps = 0
  for (let at = 1; at < days.length; at++) {
    const gap = (days[at] ?? 0) - (days[at - 1] ?? 0)
    if (gap <= 0) continue
    sum += ((rises[at] ?? 0) - (rises[at - 1] ?? 0) - rate * gap) ** 2 / gap
    gaps += 1
  }
  const degreesOfFreedom = gaps - 1
  const z = calculateNormalDeviate(confidence)
  // Student's deviate from the normal one: Cornish and Fisher's first two terms (from memory).
  const t =
    z +
    (z ** 3 + z) / (4 * degreesOfFreedom) +
    (5 * z ** 5 + 16 * z ** 3 + 3 * z) / (96 * degreesOfFreedom ** 2)
  // The number of days h from left = rate·h ± t·σ·√(h + h²/T).
  const uncertainty = (t * t * sum) / Math.max(degreesOfFreedom, 1)
  const squaredTerm = rate * rate - uncertainty / span
  const halfLinearTerm = rate * left + uncertainty / 2
  const root = Math.sqrt(Math.max(halfLinearTerm * halfLinearTerm - squaredTerm * left * left, 0))
  if (squaredTerm <= 0)
    return { early: (left * left) / (halfLinearTerm + root), late: Number.POSITIVE_INFINITY }
  return { early: (left * left) / (halfLinearTerm + root), late: (halfLinearTerm + root) / squaredTerm }
}
