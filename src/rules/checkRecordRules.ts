import type { Finding } from '../base/index.js'
import { requireDocument, type ServiceRecord } from '../spec/index.js'
import { allRules } from './allRules.js'
import type { RuleCodes } from './codes.js'
import { placeInTexts } from './placeInTexts.js'
import { requireSet } from './requireSet.js'
import type { Circumstances, DocumentSet, Named } from './rule.js'
import { runRules } from './runRules.js'
import { subjectMaker } from './setSubjects.js'

/** The findings of one record, in the order of the list of rules. */
export function checkRecordRules(
  record: Named<ServiceRecord>,
  set: DocumentSet,
  circumstances: Circumstances,
): readonly Finding<RuleCodes>[] {
  requireDocument('record.document', record?.document, 'service-record')
  requireSet(set, circumstances)
  const findings = runRules(subjectMaker(set, circumstances)(record), allRules)
  return placeInTexts(findings, { ...set, records: [record] }) as readonly Finding<RuleCodes>[]
}
