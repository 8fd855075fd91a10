import { findUnknownIds } from '../lookup/lookUp.js'
import { recordRule } from '../ruleMakers.js'

/**
 * A correction of a record that is not in the log of its machine. The id is mistyped, or the record belongs
 * to another machine. The correction changes nothing, and its work is not counted.
 * Judges: Every record with `corrects` whose log is in the set. Finds an id that no other record of that log has.
 * Place: `/corrects`
 * Params: id: as written; known: up to eight ids of the other records of the log; more: how many more exist;
 * meant: the probable id, if one is similar
 * Harm: record
 * House rule.
 */
export const rule = recordRule('record/corrects-unknown-record', 'error', ({ document: record, log }) => {
  if (record.corrects === undefined || record.corrects === record.id || log === undefined) return []
  const known = log.records.map(({ id }) => id).filter((id) => id !== record.id)
  return findUnknownIds([{ path: '/corrects', id: record.corrects, known }])
})
