import type { MachineLog, ServiceRecord, SheetReference, SpecSheet } from '../spec/index.js'
import type { DocumentSet, Named } from './rule.js'

/** The sheet that a document names by id and revision, if it is in the set. */
export function findSheet(set: DocumentSet, reference: SheetReference): Named<SpecSheet> | undefined {
  return set.sheets.find(
    ({ document }) => document.id === reference.id && document.revision === reference.revision,
  )
}

/** The log of the machine that a record belongs to, if it is in the set. */
export function findLog(set: DocumentSet, record: ServiceRecord): Named<MachineLog> | undefined {
  return set.logs.find(({ document }) => document.id === record.machine)
}
