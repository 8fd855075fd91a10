import type { Param } from '../../base/index.js'
import type { DueLine, IntervalCodes, MeterQuantity } from '../../interval/index.js'
import type { Say, Texts } from '../catalogue.js'
import { METER } from './meterNames.js'

export const intervalTexts: Texts<IntervalCodes> = {
  'interval/by-meter': ({ state, printed, since, from, duePoint, now, left }, say) => {
    const start = `${START[since ?? ''] ?? ''}${from?.date === undefined ? '' : ` on ${say.date(from.date)}`} at ${say.quantity(meterOf(from))}`
    return `${state}: ${say.quantity(printed)} since ${start}, so due at ${say.quantity(meterOf(duePoint))}; ${say.quantity(meterOf(now))} on ${say.date(now?.date ?? '')}, ${remaining(left, say)}.`
  },
  'interval/by-date': ({ state, limit, since, from, duePoint, left }, say) => {
    const period = limit !== undefined && 'period' in limit ? periodWords(limit.period, say) : ''
    return `${state}: ${period} since ${START[since ?? ''] ?? ''} on ${say.date(from?.date ?? '')}, so due on ${say.date(duePoint?.date ?? '')}; ${remaining(left, say)}.`
  },
  'interval/by-event': ({ event, date }, say) =>
    `due: ${event} on ${say.date(date)} makes it due before next use.`,
  'interval/window-left': ({ until }, say) =>
    `It may still be done until ${point(until, say)}; after that it is overdue.`,
  'interval/not-tracked': ({ meter }) =>
    `${METER[meter] ?? meter}: not tracked, since this machine has no such meter.`,
  'interval/which-first': ({ by, decidedBy, dueOn }, say) =>
    `${LIMIT[by] ?? by} comes first${dueOn === undefined ? '' : `, about ${say.date(dueOn)}`}, judged by ${decidedBy === 'days' ? 'the days on which the limits are reached' : 'the part of each limit used, since the use per day is not known'}.`,

  'interval/severe-interval-taken': ({ criteria }) => `Counted by the interval for severe use (${criteria}).`,
  'interval/severe-factor-taken': ({ factor, criteria }) =>
    `Interval multiplied by ${factor} for severe use (${criteria}).`,
  'interval/severe-not-given': () =>
    'The manual gives no interval for severe use; counted by the normal one.',
  'interval/early-answers-the-point': ({ by, date, point: at }, say) =>
    `Done early on ${say.date(date)}; it counts for the ${LIMIT[by] ?? by} point at ${point(at, say)}.`,
  'interval/early-leaves-the-point': ({ by, date, point: at }, say) =>
    `Done too early on ${say.date(date)} to count for the ${LIMIT[by] ?? by} point at ${point(at, say)}, which stays due.`,
  'interval/count-moved': ({ by, date, point: at }, say) =>
    `Done on ${say.date(date)}, outside the window of the ${LIMIT[by] ?? by} point at ${point(at, say)}; the count starts again from there.`,
  'interval/done-by-other': ({ date, service }, say) =>
    `${service} on ${say.date(date)} counts as this service.`,
  'interval/record-for-all-instances': ({ date, instance }, say) =>
    `The record of ${say.date(date)} names no side; it is taken to hold for ${instance} as well.`,
  'interval/display-changed': ({ meter, less: { value, unit } }, say) => {
    const amount = say.quantity({ value: Math.abs(Number(value)), unit })
    return `Since the count began ${METER[meter] ?? meter} was swapped, was reset or ran over: it shows ${amount} ${Number(value) < 0 ? 'more' : 'less'} than it would have.`
  },
  'interval/in-the-future': ({ what, date }, say) =>
    `${what} is dated ${say.date(date)}, after today; not counted.`,

  'interval/reading-missing': ({ meter }) =>
    `No reading of ${METER[meter] ?? meter}. Read the meter and enter it.`,
  'interval/reading-stale': ({ meter, date, days, staleAfter }, say) =>
    `The last reading of ${METER[meter] ?? meter} is of ${say.date(date)}, ${say.count(days, 'day', 'days')} of use ago (${say.number(staleAfter)} allowed). Read the meter again.`,
  'interval/reading-at-start-missing': ({ meter, of, date }, say) =>
    `No reading of ${METER[meter] ?? meter} at ${START[of] ?? of} on ${say.date(date)}. Enter what the meter showed that day.`,
  'interval/meter-broken': ({ meter, from, to }, say) =>
    `${METER[meter] ?? meter} cannot be followed from ${say.date(from)} to ${say.date(to)}. Mend the reading, or enter the swap, reset or rollover.`,
  'interval/first-use-missing': () =>
    'The date of first use is not in the log. Enter when the machine was commissioned.',
  'interval/interval-not-stated': ({ which }) =>
    `The manual states no ${WHICH[which] ?? which}: see the manual.`,
  'interval/interval-depends': ({ which, facts }, say) =>
    `The ${WHICH[which] ?? which} depends on ${say.list(facts)}, which the log does not say.`,
  'interval/factor-leaves-part': ({ period, factor }, say) =>
    `${periodWords(period, say)} times ${factor} leaves part of a month or day, so that limit cannot be told.`,
  'interval/limit-not-above-zero': ({ by }) => `The ${LIMIT[by] ?? by} limit is zero: mend the sheet.`,
  'interval/due-date-out-of-calendar': ({ period, from }, say) =>
    `${periodWords(period, say)} after ${say.date(from)} lies beyond the year 9999: mend the sheet.`,
  'interval/no-limit-tracked': () => 'The machine has no meter for any limit of this interval.',

  'interval/meter-falls': ({ before, after, from, to }, say) =>
    `The meter falls from ${say.quantity(before)} on ${say.date(from)} to ${say.quantity(after)} on ${say.date(to)}, and no swap, reset or rollover says why.`,
  'interval/meter-jumps': ({ before, after, from, to, most }, say) =>
    `The meter rises from ${say.quantity(before)} on ${say.date(from)} to ${say.quantity(after)} on ${say.date(to)}; at most ${say.quantity(most)} is possible.`,
  'interval/readings-out-of-order': ({ date, after }, say) =>
    `The reading of ${say.date(date)} stands after that of ${say.date(after)}; sorted by date.`,
  'interval/reading-repeated': ({ date }, say) =>
    `The reading of ${say.date(date)} stands twice; counted once.`,
  'interval/reading-out-of-bounds': ({ value, most }, say) =>
    `${typeof value === 'number' ? say.number(value) : value} is no meter reading; it must be from 0 to ${say.quantity(most)}. Not counted.`,
  'interval/rollover-limit-missing': ({ date }, say) =>
    `The meter ran over on ${say.date(date)}, but the log does not say past which value it starts again.`,
  'interval/rollover-taken': ({ before, after, limit }, say) =>
    `From ${say.quantity(before)} to ${say.quantity(after)}: taken as run over at ${say.quantity(limit)}. Enter the rollover to settle it.`,

  'interval/forecast-needs-readings': ({ meter, readings }, say) =>
    `${say.count(readings, 'reading', 'readings')} of ${METER[meter] ?? meter}, which show no use per day. Enter readings of at least two days.`,
  'interval/forecast-without-band': ({ readings }, say) =>
    `Only ${say.count(readings, 'reading', 'readings')}: too few to say how early or late it may be. Four are needed.`,
  'interval/forecast-without-end': () => 'The use is so uneven that no latest day can be named.',
  'interval/forecast-behind-reading': ({ date }, say) =>
    `The readings' line would have reached the limit before ${say.date(date)}, but the reading of that day shows that it had not.`,
  'interval/forecast-beyond-calendar': ({ meter }) =>
    `At its use so far ${METER[meter] ?? meter} does not reach the limit before the year 9999.`,

  'interval/import-no-machines': () =>
    'No equipment found. Give the JSON of a fleet, a list of equipment, or one machine.',
  'interval/import-ambiguous-key': ({ one, other }) =>
    `The keys “${one}” and “${other}” mean the same and hold different values; neither is taken.`,
  'interval/import-unit': ({ unit }) =>
    `“${unit}” is no unit of the odometer. Kilometre or mile must stand in OdometerUnits; the reading is left out.`,
  'interval/import-mixed-units': ({ units }, say) =>
    `The odometer is given in ${say.list(units)}. One machine must keep to one unit; its distances are left out.`,
  'interval/import-date': ({ text }) => `“${text}” has no calendar date in front; the reading is left out.`,

  'interval/first-longer-than-repeat': ({ by }, say) =>
    `The first interval is longer than the repeat by ${say.list(by.map((limit) => LIMIT[limit] ?? limit))}. The first change comes early in most manuals: look again.`,
  'interval/severe-longer-than-repeat': ({ by }) =>
    by === 'factor'
      ? 'The factor for severe use is above 1 and would lengthen the interval. Severe use shortens it.'
      : `The interval for severe use is longer than the normal one by ${LIMIT[by] ?? by}. Severe use shortens it: look again.`,
  'interval/window-not-below-repeat': ({ by }) =>
    `The ${LIMIT[by] ?? by} window is as long as the interval or longer, so the service would never be overdue.`,
  'interval/implied-speed': ({ speed, slowest, fastest }, say) =>
    `Hours and distance together mean ${say.quantity({ value: Math.round(speed * 10) / 10, unit: 'km/h' })} on average; from ${say.number(slowest)} to ${say.number(fastest)} is believed. Look for a zero too many or miles for kilometres.`,
  'interval/log-speed': ({ speed, fastest, from, to }, say) =>
    `From ${say.date(from)} to ${say.date(to)} hours and distance together mean ${say.quantity({ value: Math.round(speed), unit: 'km/h' })} on average; at most ${say.number(fastest)} is believed. Read both meters again.`,
  'interval/months-as-days': ({ days, months }, say) =>
    `${say.count(days, 'day', 'days')} looks like ${say.count(months, 'month', 'months')} turned into days. Write the months, so that month ends and leap years fall right.`,
}

const START: Readonly<Record<string, string>> = {
  'last service': 'the last service',
  'first use': 'first use',
  rebuild: 'the rebuild',
  schedule: 'a service of the schedule',
}
const LIMIT: Readonly<Record<string, string>> = {
  hours: 'hours',
  distance: 'distance',
  period: 'calendar',
  event: 'event',
}
const WHICH: Readonly<Record<string, string>> = {
  first: 'first interval',
  repeat: 'interval',
  severe: 'interval for severe use',
  window: 'window',
}

/** A due point: a date as text, or a meter value. */
function point(at: Param, say: Say): string {
  return typeof at === 'string' ? say.date(at) : say.quantity(at)
}

/** A copy as plain params: a quantity's interface has no index. */
function meterOf(point: { readonly meter?: MeterQuantity } | undefined): Param | undefined {
  return point?.meter && { ...point.meter }
}

function remaining(left: DueLine['left'], say: Say): string {
  const { value, unit } = left ?? { value: 0, unit: 'd' }
  const most = Math.abs(value)
  const amount = unit === 'd' ? say.count(most, 'day', 'days') : say.quantity({ value: most, unit })
  return `${amount} ${value < 0 ? 'past' : 'left'}`
}

/** `P1Y6M` as `1 year and 6 months`. */
function periodWords(period: string, say: Say): string {
  const parts: string[] = []
  for (const [, digits = '0', unit = 'D'] of period.matchAll(/([0-9]+)([YMWD])/g)) {
    const [one, other] = PERIOD_WORDS[unit] ?? ['day', 'days']
    parts.push(say.count(Number(digits), one, other))
  }
  return say.list(parts)
}

const PERIOD_WORDS: Readonly<Record<string, readonly [string, string]>> = {
  Y: ['year', 'years'],
  M: ['month', 'months'],
  W: ['week', 'weeks'],
  D: ['day', 'days'],
}
