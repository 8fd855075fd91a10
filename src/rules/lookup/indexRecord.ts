import { dropUndefined, type JsonPointer, readPointer } from '../../base/index.js'
import {
  type Gearcase,
  type Identity,
  type MachineLog,
  type RecordEntry,
  type RecordedTightening,
  resolveLeaf,
  type ServiceRecord,
  type Tightening,
} from '../../spec/index.js'
import { findFastening } from './fastenings.js'
import type { SheetIndex } from './indexSheet.js'
import { lookUp } from './lookUp.js'
import { makeLazy } from './makeLazy.js'

/** The lists of a record that rules compare with its sheet; empty without the sheet. */
export interface RecordIndex {
  /** Entries on gearcases of the sheet, if the record has `detail: full`. */
  readonly entries: readonly IndexedEntry[]
  /** Tightenings of parts on the sheet: first the entries', then the shields'. */
  readonly tightenings: readonly IndexedTightening[]
}

/** An entry of a record with its gearcase on the sheet. */
export interface IndexedEntry {
  readonly path: JsonPointer
  readonly entry: RecordEntry
  readonly sheet: SheetIndex
  readonly gearcase: Gearcase
  /** Whether the service changes the oil and the entry is not marked as not done. */
  readonly isChange: boolean
  /** The identity in the machine's log; empty if the log is not in the set. */
  readonly identity: Identity
}

/** A recorded tightening, and the tightening that the sheet states for this machine. */
export interface IndexedTightening {
  readonly path: JsonPointer
  readonly done: RecordedTightening
  readonly part: string
  /** Whether the part is turned by hand, as a cap is. */
  readonly isHandTurned: boolean
  /** Absent if not stated, or if it cannot be determined for this machine. */
  readonly required?: Exclude<Tightening, { readonly kind: 'not stated' }>
}

export function indexRecord(
  record: ServiceRecord,
  sheet: SheetIndex | undefined,
  log: MachineLog | undefined,
): RecordIndex {
  if (sheet === undefined) return { entries: [], tightenings: [] }
  const identity = log?.identity ?? {}
  const isChange = ({ service, notDone }: RecordEntry) =>
    notDone === undefined && lookUp(sheet.document.services, service)?.task === 'change'
  return makeLazy<RecordIndex>({
    entries: () =>
      record.detail !== 'full'
        ? []
        : record.entries.flatMap((entry, place) => {
            const gearcase = lookUp(sheet.document.gearcases, entry.gearcase)
            return gearcase === undefined
              ? []
              : [{ path: `/entries/${place}`, entry, sheet, gearcase, isChange: isChange(entry), identity }]
          }),
    tightenings: () =>
      listRecordedTightenings(record).flatMap(({ path, done }): readonly IndexedTightening[] => {
        const part = sheet.parts.find((sheetPart) => sheetPart.path === done.on)
        if (part === undefined) return []
        const { path: fasteningPath, fastening } = findFastening(part)
        const leafPath = `${fasteningPath}/tightening`
        if (readPointer(sheet.document, leafPath) === undefined) return []
        const tightening = resolveLeaf(sheet.document, identity, 'tightening', leafPath)
        const isHandTurned = fastening.drive?.kind === 'hand'
        return [
          dropUndefined({
            path,
            done,
            part: part.name,
            isHandTurned,
            required: tightening.kind === 'stated' ? tightening.value : undefined,
          }),
        ]
      }),
  })
}

/** The tightenings of a record: first its entries', then the shields'. */
export function listRecordedTightenings({ entries, shields = [] }: ServiceRecord) {
  return [
    ...entries.flatMap(({ tightened }, entry) =>
      tightened.map((done, place) => ({ path: `/entries/${entry}/tightened/${place}`, done })),
    ),
    ...shields.map((done, place) => ({ path: `/shields/${place}`, done })),
  ]
}
