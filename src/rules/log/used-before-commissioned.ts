import { defineRule } from '../rule.js'

/**
 * A record or an event dated before the machine's first use: one of the two dates is wrong, and the first
 * service is counted from the wrong day. A meter reading before it is normal, from the maker's trial. House
 * rule.
 */
export const usedBeforeCommissioned = defineRule({
  code: 'log/used-before-commissioned',
  severity: 'warning',
  about: 'machine-log',
  check: ({ document: { commissioned, records, events = [] } }) => {
    if (commissioned === undefined) return []
    const dated = [
      ...events.map(({ date }, place) => ({ date, path: `/events/${place}/date` })),
      ...records.map(({ date }, place) => ({ date, path: `/records/${place}/date` })),
    ]
    return dated
      .filter(({ date }) => date < commissioned)
      .map(({ date, path }) => ({ path, params: { date, commissioned } }))
  },
})
