import type { Finding } from '../base/index.js'
import { requireDocument, type ServiceRecord } from '../spec/index.js'
import { allRules } from './allRules.js'
import { requireCircumstances } from './requireCircumstances.js'
import { requireSet } from './requireSet.js'
import type { Circumstances, DocumentSet, Named } from './rule.js'
import { runRules } from './runRules.js'

/**
 * Everything that is wrong in one service record: for whoever has just written it down. The other documents of the set
 * are taken as they are; to judge them too, use {@link checkDocuments}.
 *
 * @param record - the record, with the caller's own name for it
 * @param set - its sheet, log, toolbox and stock; what is missing there is not judged
 * @param circumstances - `today`, `YYYY-MM-DD`: absent, nothing is judged against the calendar
 * @returns findings in the order of the list of rules
 * @throws TypeError where `record` or a list of `set` is none, or a document was not parsed; RangeError where `today` is no date
 *
 * Source: house rule; each rule names its own.
 *
 * @example
 * ```ts
 * import { checkRecordRules } from 'drivetrain-service/v1/rules'
 * const record = {
 *   kind: 'service-record', version: '1.0', id: 'r-1', machine: 'm-1', sheet: { id: 's', revision: '1' },
 *   detail: 'full', date: '2031-05-02', readings: {}, entries: [],
 * } as const
 * const set = { sheets: [], logs: [], toolboxes: [], stocks: [], procedures: [], records: [] }
 * // Is a record of the second of May right if today is the first?
 * checkRecordRules({ document: record }, set, { today: '2031-05-01' })[0]?.code // => 'record/date-in-the-future'
 * ```
 */
export function checkRecordRules(
  record: Named<ServiceRecord>,
  set: DocumentSet,
  circumstances: Circumstances = {},
): readonly Finding[] {
  requireDocument('record.document', record?.document, 'service-record')
  requireSet(set)
  requireCircumstances(circumstances)
  const subject = { kind: 'service-record' as const, named: record, prefix: '', inside: record }
  return runRules(subject, allRules, set, circumstances)
}
