import type { ServiceRecord, WarrantyFact } from '../../spec/index.js'
import { listRecordedTightenings } from '../lookup/indexRecord.js'
import { recordRule } from '../ruleMakers.js'

/**
 * A record without facts that the warranty requires according to the sheet: a claim may fail for a missing photo,
 * number or signature. Add them with a correction while they can still be found.
 * Judges: Every record with `detail` of `full` and work that was done, on a sheet with `warranty`, except corrections:
 * what they add counts in the record that they correct. Finds each fact of `asks` that is missing: `by`, `photos`,
 * `signature`; the `batch` of an oil that went in; the `partNumber` of a new seal or filter; a certificate of a wrench
 * of a `torque set`. A `?` counts as missing.
 * Place: the record
 * Params: lacks: the missing facts, as the sheet writes them
 * Harm: record
 * House rule.
 */
export const rule = recordRule('record/warranty-facts-missing', 'warning', ({ document, sheet }) => {
  const asks = sheet?.document.warranty?.asks ?? []
  const { detail, corrects, entries } = document
  const hasWork = detail === 'full' && corrects === undefined
  if (!hasWork || !entries.some(({ notDone }) => notDone === undefined)) return []
  const lacks = asks.filter((fact) => !FACT_CHECKS[fact](document))
  return lacks.length === 0 ? [] : [{ path: '', params: { lacks } }]
})

const isFilledIn = (text: string | undefined) => text !== undefined && text !== '?'

/** Whether a record states a fact in every place where it belongs. */
const FACT_CHECKS: { readonly [Fact in WarrantyFact]: (record: ServiceRecord) => boolean } = {
  'who did it': ({ by }) => isFilledIn(by),
  photos: ({ photos = [] }) => photos.some(({ file }) => isFilledIn(file)),
  signature: ({ signature }) => isFilledIn(signature?.name),
  'oil batch': ({ entries }) =>
    entries.every(({ notDone, oil, refilled }) =>
      notDone !== undefined || (oil === undefined && refilled === undefined) ? true : isFilledIn(oil?.batch),
    ),
  'part numbers': ({ entries }) =>
    entries
      .flatMap(({ seals, filters = [] }) => [...seals, ...filters])
      .every(({ done, partNumber }) => done !== 'new' || isFilledIn(partNumber)),
  'wrench certificate': (record) =>
    listRecordedTightenings(record).every(
      ({ done }) =>
        done.kind !== 'torque set' ||
        record.certificates?.some(({ tool, number }) => tool === done.tool && isFilledIn(number)) === true,
    ),
}
