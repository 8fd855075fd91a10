import type { Finding, JsonPointer } from '../base/index.js'
import { splitPointer } from '../base/index.js'
import type { DateText } from '../calendar/index.js'
import type { CheckFacts, DocumentSet, Named, RuleCodes } from '../rules/index.js'
import { checkRecordRules, requireSet } from '../rules/index.js'
import type { Id, MachineLog, RecordEntry, ServiceRecord } from '../spec/index.js'
import { resolveRecords } from '../spec/index.js'
import { judgeDone } from './judgeDone.js'
import { requireLog } from './resolveLog.js'

/** A mistake of a service that has not been corrected yet. */
export interface OpenFault {
  /** The record of the service; a correction names it in `corrects`. */
  readonly record: Id
  readonly date: DateText
  /** The mistake and its fix; `path` points into the record with its corrections. */
  readonly finding: Finding<RuleCodes>
}

/** Errors of the documents, not of the machine. */
export const PAPERWORK_CODES: readonly string[] = [
  'record/corrects-itself',
  'record/corrects-unknown-record',
  'record/date-in-the-future',
  'record/machine-not-found',
  'record/part-not-on-machine',
  'record/reading-contradicts-log',
  'record/unknown-part',
  'spec/id-used-twice',
  'spec/sheet-not-found',
]

/**
 * Lists the open faults of a machine, which must not be used while there is one: every error of a record that concerns
 * the machine, such as far too much oil, a stripped thread or a plug left loose.
 *
 * A fault is closed by a correction of its record that no longer has the error, or by a later oil change of
 * that gearcase.
 * @param log - the machine's log, with the caller's name for it
 * @param set - its sheet, toolbox and stock; checks that need a missing document are skipped
 * @param facts - `today`, as for `checkRecord`
 * @returns the open faults, in the order of the records; empty if the machine may be used
 * @throws TypeError if `log` is not a parsed log or `set` is not a set of documents; RangeError if `today` is
 *   not a date
 *
 * Source: house rule.
 * @example
 * ```ts
 * import { openFaults } from 'drivetrain-service/v1/service'
 * const log = {
 *   kind: 'machine-log', version: '1.0', id: 'one', name: 'One', sheet: { id: 'example', revision: '1' }, identity: {}, meters: {}, records: [],
 * } as const
 * const set = { sheets: [], logs: [], toolboxes: [], stocks: [], procedures: [], records: [] }
 * // How many faults did the services of a machine without records leave?
 * openFaults({ document: log }, set).length // => 0
 * ```
 */
export function openFaults(
  log: Named<MachineLog>,
  set: DocumentSet,
  facts: CheckFacts = {},
): readonly OpenFault[] {
  requireLog('log.document', log?.document)
  requireSet(set, facts)
  const { document } = log
  const records = resolveRecords(document.records).map(({ record }) => record)
  // The corrected records are judged, so the log in the set must not have the original ones.
  const correctedLog = { ...log, document: { ...document, records } }
  const otherLogs = set.logs.filter((candidate) => candidate.document.id !== document.id)
  const correctedSet = { ...set, logs: [...otherLogs, correctedLog] }
  return records.flatMap((record, place) =>
    (record.detail !== 'full' || record.entries.length === 0) && record.shields === undefined
      ? []
      : checkRecordRules({ document: record }, correctedSet, facts)
          .filter(({ code, severity }) => severity === 'error' && !PAPERWORK_CODES.includes(code))
          .filter(
            ({ path }) => !isClosedLater(findEntry(record, path), record, records.slice(place + 1), set),
          )
          .map((finding) => ({ record: record.id, date: record.date, finding })),
  )
}

function findEntry({ entries }: ServiceRecord, path: JsonPointer): RecordEntry | undefined {
  const [list, place] = splitPointer(path) ?? []
  return list === 'entries' ? entries[Number(place)] : undefined
}

/** Whether the oil of the gearcase was changed later: every judged part was opened and closed again. */
function isClosedLater(
  entry: RecordEntry | undefined,
  { date }: ServiceRecord,
  later: readonly ServiceRecord[],
  { sheets }: DocumentSet,
): boolean {
  return later.some((record) => {
    const sheet = sheets.find(
      ({ document: { id, revision } }) => id === record.sheet.id && revision === record.sheet.revision,
    )?.document
    if (sheet === undefined || record.detail !== 'full' || record.date < date) return false
    return record.entries.some(
      (laterEntry) =>
        laterEntry.gearcase === entry?.gearcase &&
        laterEntry.instance === entry.instance &&
        sheet.services[laterEntry.service]?.task === 'change' &&
        judgeDone(record, laterEntry, sheet) === undefined,
    )
  })
}
