import { dropUndefined, type Finding, type Reason, type Result } from '../base/index.js'
import { type CheckFacts, checkRecordRules, type DocumentSet, type Named } from '../rules/index.js'
import type { Id, MachineLog, ServiceRecord, SpecSheet } from '../spec/index.js'
import { resolveRecords } from '../spec/index.js'
import { type AppendCodes, type RecordCodes, recordFinding, recordReason } from './codes.js'
import { judgeDone } from './judgeDone.js'
import { type OpenFault, openFaults } from './openFaults.js'
import { requireLog } from './resolveLog.js'

/** Whether the work of an entry counts as done. */
export type EntryDone = { readonly service: Id; readonly gearcase: Id; readonly instance?: Id } & (
  | { readonly done: 'yes' }
  | { readonly done: 'no'; readonly reason: Reason<keyof RecordCodes> }
)

/** A log with one more record, and the result. */
export interface AppendedRecord {
  readonly log: MachineLog
  /** One for each entry of the record, in order; a correction is judged with the record that it corrects. */
  readonly entries: readonly EntryDone[]
  /** All open faults of the machine; while there is one, it must not be used. */
  readonly faults: readonly OpenFault[]
}

/**
 * Appends a record of the actual work, mistakes included, to the log of its machine. The findings report the
 * mistakes; those that can damage the machine stay open faults until a correction closes them. The caller
 * writes the file.
 *
 * @param record - the record, with the caller's name for it
 * @param set - the log of its machine, the sheet, the toolbox and the stock; checks that need a missing
 *   document are skipped
 * @param facts - `today`; without it, dates are not checked
 * @returns the new log, whether each entry counts, the open faults and the findings; not ok if the set has no
 *   log of the machine, the log has another sheet, or already has a record with this id
 * @throws TypeError if `record` is not a parsed service record or `set` is not a set of documents; RangeError
 *   if `today` is not a date
 *
 * Source: house rule. `resolveLog` defines which work counts as done.
 * @example
 * ```ts
 * import { appendRecord } from 'drivetrain-service/v1/service'
 * const sheet = { id: 'example', revision: '1' }
 * const record = { kind: 'service-record', version: '1.0', id: 'r', machine: 'one', sheet, detail: 'full', date: '2031-10-06', readings: {}, entries: [] } as const
 * const log = { kind: 'machine-log', version: '1.0', id: 'one', name: 'One', sheet, identity: {}, meters: {}, records: [] } as const
 * const set = { sheets: [], logs: [{ document: log }], toolboxes: [], stocks: [], procedures: [], records: [] }
 * const appended = appendRecord({ document: record }, set)
 * // How many records has the log now?
 * appended.ok && appended.value.log.records.length // => 1
 * ```
 */
export function appendRecord(
  record: Named<ServiceRecord>,
  set: DocumentSet,
  facts: CheckFacts = {},
): Result<AppendedRecord, AppendCodes> {
  const findings = checkRecordRules(record, set, facts)
  const { document } = record
  const log = set.logs.find((candidate) => candidate.document.id === document.machine)
  if (log === undefined)
    return { ok: false, findings: set.logs.length > 0 ? findings : [reportMissingLog(record), ...findings] }
  const refusal = findRefusal(record, log.document)
  if (refusal !== undefined) return { ok: false, findings: [refusal, ...findings] }
  requireLog('log', log.document)
  const appended = { ...log.document, records: [...log.document.records, document] }
  const sheet = set.sheets.find(
    ({ document: { id, revision } }) => id === document.sheet.id && revision === document.sheet.revision,
  )
  const value = {
    log: appended,
    entries: judgeEntries(document, appended, sheet?.document),
    faults: openFaults({ ...log, document: appended }, set, facts),
  }
  return { ok: true, value, findings }
}

/** Judges each entry of the record, as part of the record that it corrects. */
function judgeEntries(
  appendedRecord: ServiceRecord,
  log: MachineLog,
  sheet?: SpecSheet,
): readonly EntryDone[] {
  const resolved = resolveRecords(log.records)
  const root = resolved.at(-1)?.root
  const record = root === undefined ? undefined : resolved[root]?.record
  return appendedRecord.entries.map(({ service, gearcase, instance }) => {
    const reference = dropUndefined({ service, gearcase, instance })
    const entry = record?.entries.find(
      (recordEntry) =>
        recordEntry.service === service &&
        recordEntry.gearcase === gearcase &&
        recordEntry.instance === instance,
    )
    const reason =
      record === undefined || entry === undefined
        ? recordReason('record/corrected-record-missing', { record: appendedRecord.corrects ?? '' })
        : judgeDone(record, entry, sheet)
    return reason === undefined ? { ...reference, done: 'yes' } : { ...reference, done: 'no', reason }
  })
}

/** The finding that keeps a record out of the log. */
function findRefusal(
  { document, name }: Named<ServiceRecord>,
  { sheet, records }: MachineLog,
): Finding<AppendCodes> | undefined {
  const { kind, id } = document
  const reference = dropUndefined({ kind, id, name })
  if (sheet.id !== document.sheet.id) {
    const params = { required: sheet.id, given: document.sheet.id }
    return recordFinding('record/other-sheet', 'error', reference, '/sheet/id', params)
  }
  const isKnown = records.some((record) => record.id === id)
  return isKnown ? recordFinding('spec/id-used-twice', 'error', reference, '/id', { kind, id }) : undefined
}

function reportMissingLog({ document, name }: Named<ServiceRecord>): Finding<AppendCodes> {
  const { kind, id, machine } = document
  const params = { id: machine, known: [], more: 0, meant: undefined }
  return recordFinding(
    'record/machine-not-found',
    'error',
    dropUndefined({ kind, id, name }),
    '/machine',
    params,
  )
}
