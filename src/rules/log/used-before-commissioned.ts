import { logRule } from '../ruleMakers.js'

/**
 * A record or event dated before the machine's first use. One of the dates is wrong, and the first service
 * may be counted from the wrong day. An earlier meter reading is normal: the maker's trial run.
 * Judges: The dates of events and records of a log with `commissioned`. Finds each earlier date; the day of
 * first use is allowed.
 * Place: `/events/<place>/date` or `/records/<place>/date`
 * Params: date: as written; commissioned: as written
 * Harm: record
 * House rule.
 */
export const rule = logRule(
  'log/used-before-commissioned',
  'warning',
  ({ document: { commissioned, records, events = [] } }) => {
    if (commissioned === undefined) return []
    const datedItems = [
      ...events.map(({ date }, place) => ({ date, path: `/events/${place}/date` })),
      ...records.map(({ date }, place) => ({ date, path: `/records/${place}/date` })),
    ]
    return datedItems
      .filter(({ date }) => date < commissioned)
      .map(({ date, path }) => ({ path, params: { date, commissioned } }))
  },
)
