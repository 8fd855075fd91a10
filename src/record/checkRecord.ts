import type { Finding } from '../base/index.js'
import type { CheckFacts, DocumentSet, Named, RuleCodes } from '../rules/index.js'
import { checkRecordRules } from '../rules/index.js'
import type { ServiceRecord } from '../spec/index.js'

/**
 * Finds the mistakes in one finished service record before it is added to the log: plugs opened and not
 * tightened, seals not renewed, torques outside the stated band or the wrench's range, refills out of
 * tolerance. To check a whole set of documents use `checkDocuments`.
 *
 * @param record - the record, with the caller's name for it
 * @param set - its sheet, log and toolbox; checks that need a missing document are skipped
 * @param facts - `today`; without it, dates are not checked
 * @returns findings; an error means that the record does not describe a finished service
 * @throws TypeError if `record` is not a parsed service record or `set` is not a set of documents; RangeError
 *   if `today` is not a date
 *
 * Source: house rule. Each rule names its own.
 * @example
 * ```ts
 * import { checkRecord } from 'drivetrain-service/v1/service'
 * const record = { kind: 'service-record', version: '1.0', id: 'r', machine: 'm', sheet: { id: 's', revision: '1' }, detail: 'full', date: '2031-10-06', readings: {}, entries: [] } as const
 * const set = { sheets: [], logs: [], toolboxes: [], stocks: [], procedures: [], records: [] }
 * // How many mistakes can be found in a record without its sheet and log?
 * checkRecord({ document: record }, set).length // => 0
 * ```
 */
export function checkRecord(
  record: Named<ServiceRecord>,
  set: DocumentSet,
  facts: CheckFacts = {},
): readonly Finding<RuleCodes>[] {
  return checkRecordRules(record, set, facts)
}
