import type { MachineLog } from '../../spec/index.js'
import { logRule } from '../ruleMakers.js'

/**
 * A first use, reading, event or top-up dated after today: the year or the month is mistyped, and the machine would
 * seem to have worked less than it has. Another rule judges the dates of records.
 * Judges: `commissioned`, the dates of the readings of both meters, of events and of top-ups. Finds each date after
 * today; today itself passes. Not judged without today.
 * Place: the date
 * Params: date: the date as written; today: the day given
 * Harm: record
 * House rule.
 */
export const rule = logRule('log/date-in-the-future', 'error', ({ document: log, facts: { today } }) =>
  today === undefined
    ? []
    : datesOf(log)
        .filter(({ date }) => date > today)
        .map(({ path, date }) => ({ path, params: { date, today } })),
)

function datesOf(log: MachineLog): readonly { readonly path: string; readonly date: string }[] {
  const list = (path: string, dated: readonly { readonly date: string }[] | undefined) =>
    (dated ?? []).map(({ date }, place) => ({ path: `${path}/${place}/date`, date }))
  return [
    ...(log.commissioned === undefined ? [] : [{ path: '/commissioned', date: log.commissioned }]),
    ...list('/meters/hours/readings', log.meters.hours?.readings),
    ...list('/meters/distance/readings', log.meters.distance?.readings),
    ...list('/events', log.events),
    ...list('/topUps', log.topUps),
  ]
}
