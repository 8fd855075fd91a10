import type { MachineLog } from '../../spec/index.js'
import { logRule } from '../ruleMakers.js'

/**
 * A first use, reading, event or top-up dated after today. The year or the month is mistyped, and the machine
 * would seem to have worked less. Another rule checks the dates of records.
 * Judges: `commissioned`, the dates of the readings of both meters, of events and of top-ups. Finds each date
 * after today; today is allowed. Skipped if `today` is not given.
 * Place: the date
 * Params: date: the date as written; today: today's date
 * Harm: record
 * House rule.
 */
export const rule = logRule('log/date-in-the-future', 'error', ({ document: log, facts: { today } }) =>
  today === undefined
    ? []
    : listDates(log)
        .filter(({ date }) => date > today)
        .map(({ path, date }) => ({ path, params: { date, today } })),
)

function listDates(log: MachineLog): readonly { readonly path: string; readonly date: string }[] {
  const listItemDates = (path: string, items: readonly { readonly date: string }[] | undefined) =>
    (items ?? []).map(({ date }, index) => ({ path: `${path}/${index}/date`, date }))
  return [
    ...(log.commissioned === undefined ? [] : [{ path: '/commissioned', date: log.commissioned }]),
    ...listItemDates('/meters/hours/readings', log.meters.hours?.readings),
    ...listItemDates('/meters/distance/readings', log.meters.distance?.readings),
    ...listItemDates('/events', log.events),
    ...listItemDates('/topUps', log.topUps),
  ]
}
