import { type JsonPointer, readPointer } from '../../base/index.js'
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
import { fasteningOf } from './fasteningOf.js'
import type { SheetIndex } from './indexSheet.js'
import { lazily } from './lazily.js'
import { lookUp } from './lookUp.js'

/** The lists of a record that rules judge by its sheet, each made once a record; empty without the sheet. */
export interface RecordIndex {
  /** Entries of a record kept in full, on gearcases that the sheet has. */
  readonly entries: readonly EntryAt[]
  /** Tightenings of parts that the sheet has: of the entries, then of the shields. */
  readonly tightenings: readonly RecordedTighteningAt[]
}

/** One entry of a record with what it can be judged by. */
export interface EntryAt {
  readonly path: JsonPointer
  readonly entry: RecordEntry
  readonly sheet: SheetIndex
  readonly gearcase: Gearcase
  /** What the machine's log says of it; nothing where the log is not in the set. */
  readonly identity: Identity
}

/** A tightening as recorded, and what the sheet states for exactly this machine. */
export interface RecordedTighteningAt {
  readonly path: JsonPointer
  readonly done: RecordedTightening
  readonly part: string
  /** Absent: not stated, or it cannot be determined for this machine. */
  readonly required?: Exclude<Tightening, { readonly kind: 'not stated' }>
}

export function indexRecord(
  record: ServiceRecord,
  sheet: SheetIndex | undefined,
  log: MachineLog | undefined,
): RecordIndex {
  if (sheet === undefined) return { entries: [], tightenings: [] }
  const identity = log?.identity ?? {}
  return lazily<RecordIndex>({
    entries: () =>
      record.detail !== 'full'
        ? []
        : record.entries.flatMap((entry, place) => {
            const gearcase = lookUp(sheet.document.gearcases, entry.gearcase)
            return gearcase === undefined
              ? []
              : [{ path: `/entries/${place}`, entry, sheet, gearcase, identity }]
          }),
    tightenings: () =>
      tighteningsDone(record).flatMap(({ path, done }): readonly RecordedTighteningAt[] => {
        const part = sheet.parts.find((one) => one.path === done.on)
        if (part === undefined) return []
        const leafPath = `${fasteningOf(part).path}/tightening`
        if (readPointer(sheet.document, leafPath) === undefined) return []
        const leaf = resolveLeaf(sheet.document, identity, 'tightening', leafPath)
        return [{ path, done, part: part.name, ...(leaf.kind === 'stated' ? { required: leaf.value } : {}) }]
      }),
  })
}

/** Everything that a record says was tightened: of its entries, then of the shields. */
export function tighteningsDone({ entries, shields = [] }: ServiceRecord) {
  return [
    ...entries.flatMap(({ tightened }, entry) =>
      tightened.map((done, place) => ({ path: `/entries/${entry}/tightened/${place}`, done })),
    ),
    ...shields.map((done, place) => ({ path: `/shields/${place}`, done })),
  ]
}
