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
import { findFastening } from './findFastening.js'
import type { SheetIndex } from './indexSheet.js'
import { lookUp } from './lookUp.js'
import { makeLazy } from './makeLazy.js'

/** The lists of a record that rules judge against its sheet; empty without the sheet. */
export interface RecordIndex {
  /** Entries of a record with `detail` of `full`, on gearcases of the sheet. */
  readonly entries: readonly IndexedEntry[]
  /** Tightenings of parts of the sheet: those of the entries, then those of the shields. */
  readonly tightenings: readonly IndexedTightening[]
}

/** An entry of a record with its gearcase on the sheet. */
export interface IndexedEntry {
  readonly path: JsonPointer
  readonly entry: RecordEntry
  readonly sheet: SheetIndex
  readonly gearcase: Gearcase
  /** Whether the oil was to be changed, and nothing says that it was not. */
  readonly isChange: boolean
  /** The identity in the machine's log; empty if the log is not in the set. */
  readonly identity: Identity
}

/** A recorded tightening, and the one that the sheet states for this machine. */
export interface IndexedTightening {
  readonly path: JsonPointer
  readonly done: RecordedTightening
  readonly part: string
  /** Whether the part is turned by hand, such as a cap. */
  readonly isHandTurned: boolean
  /** Absent if it is not stated or cannot be determined for this machine. */
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
        const part = sheet.parts.find((one) => one.path === done.on)
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

/** The tightenings of a record: those of its entries, then those of the shields. */
export function listRecordedTightenings({ entries, shields = [] }: ServiceRecord) {
  return [
    ...entries.flatMap(({ tightened }, entry) =>
      tightened.map((done, place) => ({ path: `/entries/${entry}/tightened/${place}`, done })),
    ),
    ...shields.map((done, place) => ({ path: `/shields/${place}`, done })),
  ]
}
