import type { Finding } from '../base/index.js'
import {
  type Circumstances,
  checkRecordRules,
  type DocumentSet,
  type Named,
  type RuleCodes,
} from '../rules/index.js'
import type { ServiceRecord } from '../spec/index.js'

/**
 * Finds everything that is wrong in one finished service record, for anyone who is about to append it to its log: plugs
 * opened and not tightened, seals not renewed, torques outside the stated band or out of the wrench's reach, refills out
 * of tolerance. To judge a whole set of documents use `checkDocuments` of the rules room.
 *
 * @param record - the record, with the caller's own name for it
 * @param set - its sheet, log and toolbox; what is not there is not judged
 * @param circumstances - `today`: absent, no date is judged
 * @returns findings; an error among them means that the record does not describe a finished service
 * @throws TypeError where `record` is not a parsed service record or `set` is not a set; RangeError where `today` is not a date
 *
 * Source: house rule; each rule names its own.
 * @example
 * ```ts
 * import { checkRecord } from 'drivetrain-service/v1/service'
 * const record = { kind: 'service-record', version: '1.0', id: 'r', machine: 'm', sheet: { id: 's', revision: '1' }, detail: 'full', date: '2031-10-06', readings: {}, entries: [] } as const
 * const set = { sheets: [], logs: [], toolboxes: [], stocks: [], procedures: [], records: [] }
 * // What can be said against a record without its sheet and log?
 * checkRecord({ document: record }, set).length // => 0
 * ```
 */
export function checkRecord(
  record: Named<ServiceRecord>,
  set: DocumentSet,
  circumstances: Circumstances = {},
): readonly Finding<RuleCodes>[] {
  return checkRecordRules(record, set, circumstances)
}
