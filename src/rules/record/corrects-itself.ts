import { recordRule } from '../ruleMakers.js'

/**
 * A correction that corrects itself, or corrections that correct each other in a circle: no record is left that they could
 * change, and their work is not counted.
 * Judges: Every record with `corrects`. Follows `corrects` from record to record of the log. Finds a record that is
 * reached again from itself.
 * Place: `/corrects`
 * Params: id: as written
 * Harm: record
 * House rule.
 */
export const rule = recordRule('record/corrects-itself', 'error', ({ document: record, log }) => {
  const { id, corrects } = record
  const seenIds = new Set<string>()
  let nextId = corrects
  while (nextId !== undefined && nextId !== id && !seenIds.has(nextId)) {
    seenIds.add(nextId)
    const currentId = nextId
    nextId = log?.records.find((otherRecord) => otherRecord.id === currentId)?.corrects
  }
  return nextId === undefined || nextId !== id || corrects === undefined
    ? []
    : [{ path: '/corrects', params: { id: corrects } }]
})
