import { type JsonPointer, readPointer } from '../../base/index.js'
import { resolveLeaf, type ServiceRecord, type Tightening, type TighteningDone } from '../../spec/index.js'
import { findLog, findSheet } from '../partners.js'
import type { DocumentSet } from '../rule.js'
import { sheetParts } from './sheetParts.js'

/** A tightening as recorded, and what the sheet asks for on exactly this machine. */
export interface DoneAt {
  readonly path: JsonPointer
  readonly done: TighteningDone
  readonly part: string
  /** Absent: not stated, or it cannot be told for this machine. */
  readonly wanted?: Exclude<Tightening, { readonly kind: 'not stated' }>
}

/** Every tightening that a record names, on parts that its sheet has: of its entries, then of its shields. */
export function recordTightenings(record: ServiceRecord, set: DocumentSet): readonly DoneAt[] {
  const sheet = findSheet(set, record.sheet)?.document
  if (sheet === undefined) return []
  const identity = findLog(set, record)?.document.identity ?? {}
  const parts = sheetParts(sheet)
  const all = [
    ...record.entries.flatMap(({ tightened }, entry) =>
      tightened.map((done, place) => ({ path: `/entries/${entry}/tightened/${place}`, done })),
    ),
    ...(record.shields ?? []).map((done, place) => ({ path: `/shields/${place}`, done })),
  ]
  return all.flatMap(({ path, done }): DoneAt[] => {
    const part = parts.find((one) => one.path === done.on)
    if (part === undefined) return []
    const holder = { opening: '', cover: '/bolts', shield: '/fasteners' }[part.kind]
    const leafPath = `${part.path}${holder}/tightening`
    if (readPointer(sheet, leafPath) === undefined) return []
    const resolved = resolveLeaf(sheet, identity, 'tightening', leafPath)
    return [
      { path, done, part: part.name, ...(resolved.kind === 'stated' ? { wanted: resolved.value } : {}) },
    ]
  })
}
