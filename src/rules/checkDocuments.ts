import { isDate } from '../calendar/isDate.js'
import type { Finding } from '../finding.js'
import { allRules } from './allRules.js'
import { applyWaivers } from './applyWaivers.js'
import { comparePlaces } from './comparePlaces.js'
import { roomFindings } from './roomFindings.js'
import type { Circumstances, DocumentSet } from './rule.js'
import { runRules } from './runRules.js'
import { setSubjects } from './setSubjects.js'
import { waiverWithoutFinding } from './spec/waiver-without-finding.js'

/**
 * Everything that is wrong, or worth knowing, in a closed set of documents: for whoever writes sheets, keeps logs or
 * takes both over from others. The documents are those that `parse…` of `/v1/spec` gave back; what is wrong in
 * their shape was found there. What `validateProcedure` and `readMeters` find is among the findings, with their codes. To judge one record as it is written, use {@link checkRecordRules}.
 *
 * @param set - the documents, by kind; rules look up partners (a log's sheet) in it and keep silent without them
 * @param circumstances - `today`, `YYYY-MM-DD`: absent, nothing is judged against the calendar
 * @returns all findings, document by document in the order given, sheets first, inside a document in the order in
 * which it is written. A finding that its sheet waives keeps its place, carries `waived`, and is information.
 * @throws TypeError where `set` lacks a list or a document stands in the wrong one; RangeError where `today` is no date
 *
 * Source: house rule; each rule names its own.
 *
 * @example
 * // Is there anything to mend in an empty set?
 * import { checkDocuments } from 'drivetrain-service/v1/rules'
 * checkDocuments({ sheets: [], logs: [], toolboxes: [], stocks: [], procedures: [], records: [] })
 * // => []
 */
export function checkDocuments(set: DocumentSet, circumstances: Circumstances = {}): readonly Finding[] {
  requireSet(set)
  const { today } = circumstances
  if (today !== undefined && !isDate(today))
    throw new RangeError(`circumstances.today: a date YYYY-MM-DD is wanted, not ${JSON.stringify(today)}`)
  return setSubjects(set).flatMap((subject) => {
    const found = [...runRules(subject, allRules, set, circumstances), ...roomFindings(subject, set)]
    const { document } = subject.inside
    const { findings, unusedWaivers } =
      document.kind === 'spec-sheet' ? applyWaivers(document, found) : { findings: found, unusedWaivers: [] }
    const left = runRules(subject, [waiverWithoutFinding], set, { unusedWaivers })
    return [...findings, ...left].sort((one, other) => comparePlaces(document, one.path, other.path))
  })
}

const LISTS = [
  ['sheets', 'spec-sheet'],
  ['logs', 'machine-log'],
  ['toolboxes', 'toolbox'],
  ['stocks', 'stock'],
  ['procedures', 'procedure'],
  ['records', 'service-record'],
] as const

function requireSet(set: DocumentSet): void {
  if (typeof set !== 'object' || set === null)
    throw new TypeError('set: an object with lists of documents is wanted')
  for (const [list, kind] of LISTS) {
    const documents: unknown = set[list]
    if (!Array.isArray(documents)) throw new TypeError(`set.${list}: a list of documents is wanted`)
    for (const [place, named] of documents.entries())
      if (named?.document?.kind !== kind)
        throw new TypeError(`set.${list}[${place}]: { document } with a ${kind} is wanted`)
  }
}
