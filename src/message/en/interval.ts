import type { Param } from '../../base/index.js'
import type { DueLine, IntervalCodes, MeterQuantity } from '../../interval/index.js'
import type { SpecCodes } from '../../spec/index.js'
import type { Say, Texts } from '../catalogue.js'
import { cardWords } from './card.js'
import { METER_NAMES, writeFactNames } from './words.js'

export const intervalTexts: Texts<Omit<IntervalCodes, keyof SpecCodes>> = {
  'interval/by-meter': ({ verdict, printed, since, from, duePoint, now, left }, say) => {
    const start = `${START_NAMES[since ?? ''] ?? ''}${from?.date === undefined ? '' : ` on ${say.date(from.date)}`} at ${say.quantity(copyMeter(from))}`
    return `${verdict}: ${say.quantity(printed)} since ${start}, due at ${say.quantity(copyMeter(duePoint))}; ${say.quantity(copyMeter(now))} on ${say.date(now?.date ?? '')}, ${writeRemaining(left, say)}.`
  },
  'interval/by-date': ({ verdict, limit, since, from, duePoint, left }, say) => {
    const period = limit !== undefined && 'period' in limit ? writePeriod(limit.period, say) : ''
    return `${verdict}: ${period} since ${START_NAMES[since ?? ''] ?? ''} on ${say.date(from?.date ?? '')}, due on ${say.date(duePoint?.date ?? '')}; ${writeRemaining(left, say)}.`
  },
  'interval/by-event': ({ event, date }, say) =>
    `due: ${event} on ${say.date(date)}. Service before next use.`,
  'interval/window-left': ({ until }, say) =>
    `The service window ends ${writePoint(until, say)}; after that it is overdue.`,
  'interval/not-tracked': ({ meter }) =>
    `Not tracked: this machine has no meter for ${LIMIT_NAMES[meter] ?? meter}.`,
  'interval/governing-limit': ({ by, decidedBy, dueOn }, say) =>
    `Governing limit: ${LIMIT_NAMES[by] ?? by}${dueOn === undefined ? '' : `, about ${say.date(dueOn)}`} (${decidedBy === 'days' ? 'its date comes first' : 'the largest share is used; use per day not known'}).`,

  'interval/severe-interval-applied': ({ criteria }) => `Interval for severe use applied (${criteria}).`,
  'interval/severe-factor-applied': ({ factor, criteria }) =>
    `Interval multiplied by ${factor} for severe use (${criteria}).`,
  'interval/severe-not-given': () =>
    'The manual gives no interval for severe use; the normal one is applied.',
  'interval/early-service-counts': ({ by, date, point: at }, say) =>
    `Done early on ${say.date(date)}; it counts as the service due ${writePoint(at, say)} (${LIMIT_NAMES[by] ?? by}).`,
  'interval/early-service-does-not-count': ({ by, date, point: at }, say) =>
    `Done too early on ${say.date(date)} to count as the service due ${writePoint(at, say)} (${LIMIT_NAMES[by] ?? by}), which stays due.`,
  'interval/count-restarted': ({ by, date, point: at }, say) =>
    `Done on ${say.date(date)}, outside the window of the service due ${writePoint(at, say)} (${LIMIT_NAMES[by] ?? by}); counting restarts on that day.`,
  'interval/done-by-other-service': ({ date, service }, say) =>
    `${service} on ${say.date(date)} counts as this service.`,
  'interval/record-for-all-instances': ({ date, instance }, say) =>
    `The record of ${say.date(date)} names no instance; it is assumed to cover ${instance} too.`,
  'interval/display-changed': ({ meter, less: { value, unit } }, say) => {
    const amount = say.quantity({ value: Math.abs(Number(value)), unit })
    return `Since counting began, ${METER_NAMES[meter] ?? meter} was swapped, was reset or rolled over: it shows ${amount} ${Number(value) < 0 ? 'more' : 'less'} than it would otherwise.`
  },
  'interval/date-in-the-future': ({ what, date }, say) =>
    `${what} is dated ${say.date(date)}, which is after today, so it is not counted.`,

  'interval/reading-missing': ({ meter }) =>
    `No reading of ${METER_NAMES[meter] ?? meter}. Read the meter and enter it.`,
  'interval/reading-stale': ({ meter, date, days, staleAfter }, say) =>
    `The last reading of ${METER_NAMES[meter] ?? meter}, on ${say.date(date)}, is ${say.count(days, 'day', 'days')} of use old (limit ${say.number(staleAfter)}). Read the meter again.`,
  'interval/reading-at-start-missing': ({ meter, of, date }, say) =>
    `No reading of ${METER_NAMES[meter] ?? meter} at ${START_NAMES[of] ?? of} on ${say.date(date)}. Enter the reading for that day.`,
  'interval/meter-broken': ({ meter, from, to }, say) =>
    `Readings of ${METER_NAMES[meter] ?? meter} from ${say.date(from)} to ${say.date(to)} are inconsistent. Correct one of them, or enter the swap, reset or rollover.`,
  'interval/first-use-missing': () => 'The date of first use is missing from the log. Enter the date.',
  'interval/interval-not-stated': ({ which }) =>
    `The manual states no ${INTERVAL_NAMES[which] ?? which}: see the manual.`,
  'interval/interval-depends': ({ which, facts }, say) =>
    `The ${INTERVAL_NAMES[which] ?? which} depends on ${say.list(writeFactNames(facts))}. Enter it in the log.`,
  'interval/fractional-period': ({ period, factor }, say) =>
    `${writePeriod(period, say)} × ${factor} is not a whole number of months or days; limit unknown.`,
  'interval/due-date-out-of-calendar': ({ period, from }, say) =>
    `${writePeriod(period, say)} after ${say.date(from)} is beyond the year 9999. Correct the sheet.`,
  'interval/no-limit-tracked': () => 'This machine has no meter for any limit of this interval.',

  'interval/meter-falls': ({ before, after, from, to }, say) =>
    `The meter falls from ${say.quantity(before)} on ${say.date(from)} to ${say.quantity(after)} on ${say.date(to)}, without a swap, reset or rollover.`,
  'interval/meter-jumps': ({ before, after, from, to, largest }, say) =>
    `The meter rises from ${say.quantity(before)} on ${say.date(from)} to ${say.quantity(after)} on ${say.date(to)}; at most ${say.quantity(largest)} is possible.`,
  'interval/readings-out-of-order': ({ date, after }, say) =>
    `The reading of ${say.date(date)} follows that of ${say.date(after)}; sorted by date.`,
  'interval/reading-repeated': ({ date }, say) => `Duplicate reading on ${say.date(date)}; counted once.`,
  'interval/reading-out-of-bounds': ({ value, largest }, say) =>
    `${typeof value === 'number' ? say.number(value) : value} is not a possible meter reading (0 to ${say.quantity(largest)}); not counted.`,
  'interval/rollover-limit-missing': ({ date }, say) =>
    `The meter rolled over on ${say.date(date)}, but the log does not state at which value. Enter it.`,
  'interval/rollover-assumed': ({ before, after, limit }, say) =>
    `From ${say.quantity(before)} to ${say.quantity(after)}: assumed to be a rollover at ${say.quantity(limit)}. Enter the rollover to confirm it.`,

  'interval/forecast-needs-readings': ({ meter, readings }, say) =>
    `Use per day not known: ${say.count(readings, 'reading', 'readings')} of ${METER_NAMES[meter] ?? meter}. Enter readings from at least two days.`,
  'interval/forecast-without-band': ({ readings }, say) =>
    `Only ${say.count(readings, 'reading', 'readings')}: too few for an earliest and a latest date. Four are needed.`,
  'interval/forecast-without-end': () => 'Use is too uneven for a latest date.',
  'interval/forecast-contradicted': ({ date }, say) =>
    `The trend predicts an earlier date, but the reading on ${say.date(date)} contradicts it.`,
  'interval/forecast-beyond-calendar': ({ meter }) =>
    `At this rate of use ${METER_NAMES[meter] ?? meter} does not reach the limit before the year 9999.`,

  'interval/import-no-machines': () =>
    'No equipment found. Expected the JSON of a fleet, a list of equipment, or one machine.',
  'interval/import-ambiguous-key': ({ one, other }) =>
    `The keys “${one}” and “${other}” mean the same but have different values; neither is used.`,
  'interval/import-unit-unknown': ({ unit }) =>
    `Unknown odometer unit “${unit}”. OdometerUnits must be kilometre or mile; the reading is skipped.`,
  'interval/import-mixed-units': ({ units }, say) =>
    `Odometer readings in ${say.list(units)}. A machine must use one unit; its distances are skipped.`,
  'interval/import-date-unreadable': ({ text }) =>
    `“${text}” does not start with a date; the reading is skipped.`,

  'interval/first-longer-than-repeat': ({ by }, say) =>
    `The first interval is longer than the repeat interval (${say.list(by.map((limit) => LIMIT_NAMES[limit] ?? limit))}). Most manuals put the first change early: check the manual.`,
  'interval/severe-longer-than-repeat': ({ by }) =>
    by === 'factor'
      ? 'The factor for severe use is above 1 and would lengthen the interval. Severe use shortens it: check the manual.'
      : `The interval for severe use is longer than the normal one (${LIMIT_NAMES[by] ?? by}). Severe use shortens it: check the manual.`,
  'interval/window-not-below-repeat': ({ by }) =>
    `The ${LIMIT_NAMES[by] ?? by} window is not shorter than the interval, so the service would never be overdue. Check the manual.`,
  'interval/implied-speed': ({ speed, slowest, fastest }, say) =>
    `Hours and distance together give an average of ${say.quantity({ value: Math.round(speed * 10) / 10, unit: 'km/h' })}; plausible is ${say.number(slowest)} to ${say.number(fastest)}. Check for an extra zero, or miles for kilometres.`,
  'interval/log-speed': ({ speed, fastest, from, to }, say) =>
    `From ${say.date(from)} to ${say.date(to)} hours and distance together give an average of ${say.quantity({ value: Math.round(speed), unit: 'km/h' })}; at most ${say.number(fastest)} is plausible. Read both meters again.`,
  'interval/months-as-days': ({ days, months }, say) =>
    `${say.count(days, 'day', 'days')} looks like ${say.count(months, 'month', 'months')} converted to days. Write months: days ignore month ends and leap years.`,
}

const START_NAMES: Readonly<Record<string, string>> = {
  'last service': 'the last service',
  'first use': 'first use',
  rebuild: 'the rebuild',
  schedule: 'a scheduled service',
}
const LIMIT_NAMES: Readonly<Record<string, string>> = cardWords.dueBy
const INTERVAL_NAMES: Readonly<Record<string, string>> = {
  first: 'first interval',
  repeat: 'interval',
  severe: 'interval for severe use',
  window: 'window',
}

/** A due point: a date as text, or a meter value. */
function writePoint(at: Param, say: Say): string {
  return typeof at === 'string' ? `on ${say.date(at)}` : `at ${say.quantity(at)}`
}

/** The meter value as a plain param: the interface has no index signature. */
function copyMeter(point: { readonly meter?: MeterQuantity } | undefined): Param | undefined {
  return point?.meter && { ...point.meter }
}

function writeRemaining(left: DueLine['left'], say: Say): string {
  const { value, unit } = left ?? { value: 0, unit: 'd' }
  const size = Math.abs(value)
  const amount = unit === 'd' ? say.count(size, 'day', 'days') : say.quantity({ value: size, unit })
  return value < 0 ? `${amount} over` : `${amount} left`
}

/** `P1Y6M` as `1 year and 6 months`. */
function writePeriod(period: string, say: Say): string {
  const parts: string[] = []
  for (const [, digits = '0', unit = 'D'] of period.matchAll(/([0-9]+)([YMWD])/g)) {
    const [singular, plural] = PERIOD_UNIT_NAMES[unit] ?? ['day', 'days']
    parts.push(say.count(Number(digits), singular, plural))
  }
  return say.list(parts)
}

const PERIOD_UNIT_NAMES: Readonly<Record<string, readonly [string, string]>> = {
  Y: ['year', 'years'],
  M: ['month', 'months'],
  W: ['week', 'weeks'],
  D: ['day', 'days'],
}
