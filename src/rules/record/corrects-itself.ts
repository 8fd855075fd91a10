import { recordRule } from '../ruleMakers.js'

/**
 * A correction of itself, or corrections of each other in a circle. There is no record to correct, and their
 * work is not counted.
 * Judges: Every record with `corrects`. Follows `corrects` through the records of the log. Finds a record
 * that leads back to itself.
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
    nextId = log?.records.find((logRecord) => logRecord.id === currentId)?.corrects
  }
  return nextId === undefined || nextId !== id || corrects === undefined
    ? []
    : [{ path: '/corrects', params: { id: corrects } }]
})
