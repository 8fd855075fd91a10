import type { Finding } from '../base/index.js'
import { requireDocument, resolveRecords, type ServiceRecord } from '../spec/index.js'
import { allRules } from './allRules.js'
import type { RuleCodes } from './codes.js'
import { createSubjectMaker, type Subject } from './listSubjects.js'
import { requireSet } from './requireSet.js'
import type { CheckFacts, DocumentSet, Named } from './rule.js'
import { moveFindings, runRules } from './runRules.js'

/** The findings of one record, in the order of the rules. */
export function checkRecordRules(
  record: Named<ServiceRecord>,
  set: DocumentSet,
  facts: CheckFacts,
): readonly Finding<RuleCodes>[] {
  requireDocument('record.document', record?.document, 'service-record')
  requireSet(set, facts)
  const findings = findInRecord(record, set, facts)
  return moveFindings(findings, { ...set, records: [record] }) as readonly Finding<RuleCodes>[]
}

/** A correction's statements about the machine are judged as part of the record that it corrects. */
function findInRecord(record: Named<ServiceRecord>, set: DocumentSet, facts: CheckFacts): readonly Finding[] {
  const makeSubject = createSubjectMaker(set, facts)
  const runAllRules = (subject: Subject) => runRules(subject, allRules)
  const { document } = record
  const subject = makeSubject(record)
  const { log } = subject.input
  if (document.corrects === undefined || log === undefined) return runAllRules(subject)
  const ownFindings = runAllRules({
    ...subject,
    input: { ...subject.input, record: { entries: [], tightenings: [] } },
  })
  const records = log.records.filter(({ id }) => id !== document.id)
  const resolved = resolveRecords([...records, document])
  const { root } = resolved.at(-1) ?? {}
  const corrected = root === undefined ? undefined : resolved[root]
  if (corrected === undefined) return ownFindings
  const { places } = corrected
  const prefix = `/records/${records.length}`
  const correctedFindings = runAllRules({
    ...makeSubject({ document: corrected.record }),
    inside: record,
    places,
  }).flatMap((finding) =>
    finding.path.startsWith(`${prefix}/`) ? { ...finding, path: finding.path.slice(prefix.length) } : [],
  )
  const isOwnFinding = ({ code, path }: Finding) =>
    ownFindings.some((ownFinding) => ownFinding.code === code && ownFinding.path === path)
  return [...ownFindings, ...correctedFindings.filter((finding) => !isOwnFinding(finding))]
}
