import type { JsonPointer } from '../../base/index.js'
import type { Gearcase, Identity, RecordEntry, ServiceRecord, SpecSheet } from '../../spec/index.js'
import { findLog, findSheet } from '../partners.js'
import type { DocumentSet } from '../rule.js'
import { lookUp } from './lookUp.js'

/** One entry of a record with what it can be judged by. */
export interface EntryAt {
  readonly path: JsonPointer
  readonly entry: RecordEntry
  readonly sheet: SpecSheet
  readonly gearcase: Gearcase
  /** What the machine's log says of it; nothing where the log is not in the set. */
  readonly identity: Identity
}

/** The entries of a record kept in full, on gearcases that its sheet has; none without the sheet. */
export function recordEntries(record: ServiceRecord, set: DocumentSet): readonly EntryAt[] {
  const sheet = findSheet(set, record.sheet)?.document
  if (sheet === undefined || record.detail !== 'full') return []
  const identity = findLog(set, record)?.document.identity ?? {}
  return record.entries.flatMap((entry, place) => {
    const gearcase = lookUp(sheet.gearcases, entry.gearcase)
    return gearcase === undefined ? [] : [{ path: `/entries/${place}`, entry, sheet, gearcase, identity }]
  })
}
