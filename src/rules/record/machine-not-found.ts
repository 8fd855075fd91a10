import { findUnknownIds } from '../lookup/lookUp.js'
import { recordRule } from '../ruleMakers.js'

/**
 * A record of a machine whose log is not in the set, although other logs are. The work would count for no
 * machine.
 * Judges: Finds a `machine` that is the `id` of no log. Skipped in a set without a log, or for a record
 * inside one.
 * Place: `/machine`
 * Params: id: as written; known: up to eight ids of logs; more: how many more exist; meant: the probable id,
 * if one is similar
 * Harm: record
 * House rule.
 */
export const rule = recordRule('record/machine-not-found', 'error', ({ document: record, set: { logs } }) => {
  const known = logs.map(({ document }) => document.id)
  const isInsideLog = logs.some(({ document }) => document.records.includes(record))
  if (known.length === 0 || isInsideLog) return []
  return findUnknownIds([{ path: '/machine', id: record.machine, known }])
})
