import { dropUndefined, type JsonPointer } from '../base/index.js'
import type { RecordEntry, ServiceRecord } from './serviceRecord.js'

/** A record with its corrections applied. */
export interface ResolvedRecord {
  /** A correction has no entries and shields here; they are merged into the corrected record. */
  readonly record: ServiceRecord
  /**
   * The index of the record in the list. For a correction: the index of the corrected record, undefined if
   * there is none.
   */
  readonly root: number | undefined
  /**
   * For each corrected part of `record`: its pointer in the list of records as written, such as
   * `/3/entries/0/level`.
   */
  readonly places: ReadonlyMap<JsonPointer, JsonPointer>
}

type UnknownFields = Record<string, unknown>

const NO_PLACES: ResolvedRecord['places'] = new Map()
/** Fields that a correction states as a whole. */
const REPLACED_FIELDS = [
  'workingTime',
  'usedOil',
  'usedOilLog',
  'photos',
  'certificates',
  'signature',
] as const
const MERGED_LISTS: readonly string[] = ['opened', 'tightened', 'seals', 'filters']

/**
 * The records of a log in order, each with its corrections applied. Corrections apply in the order of the
 * list; a correction of a correction applies to the record at the start of the chain. A correction of itself,
 * or of a record that is not in the list, changes nothing.
 */
export function resolveRecords(records: readonly ServiceRecord[]): readonly ResolvedRecord[] {
  const corrections = [...records.entries()].flatMap(([at, correction]) =>
    correction.corrects === undefined ? [] : [{ at, correction, root: findRoot(records, at) }],
  )
  if (corrections.length === 0) return records.map((record, root) => ({ record, root, places: NO_PLACES }))
  return records.map((record, place) => {
    if (record.corrects !== undefined) {
      const { shields: _shields, ...rest } = record
      return { record: { ...rest, entries: [] }, root: findRoot(records, place), places: NO_PLACES }
    }
    const places = new Map<JsonPointer, JsonPointer>()
    const corrected = corrections
      .filter(({ root }) => root === place)
      .reduce((before, { at, correction }) => applyCorrection(before, correction, `/${at}`, places), record)
    return { record: corrected, root: place, places }
  })
}

/** The index of the record at the start of a chain of corrections; undefined if there is none. */
function findRoot(records: readonly ServiceRecord[], place: number): number | undefined {
  const seen = new Set<number>()
  let at = place
  while (!seen.has(at)) {
    seen.add(at)
    const corrects = records[at]?.corrects
    if (corrects === undefined) return at
    at = records.findIndex(({ id }) => id === corrects)
    if (at === -1) return undefined
  }
  return undefined
}

function applyCorrection(
  record: ServiceRecord,
  correction: ServiceRecord,
  from: JsonPointer,
  places: Map<JsonPointer, JsonPointer>,
): ServiceRecord {
  const { entries: entryCorrections, shields = [], corrected = {} } = correction
  const entries = [...record.entries]
  for (const [number, entryCorrection] of entryCorrections.entries()) {
    const foundIndex = entries.findIndex(
      ({ service, gearcase, instance }) =>
        service === entryCorrection.service &&
        gearcase === entryCorrection.gearcase &&
        instance === entryCorrection.instance,
    )
    const at = foundIndex === -1 ? entries.length : foundIndex
    const path = `/entries/${at}`
    const sourcePath = `${from}/entries/${number}`
    const before = entries[at]
    entries[at] =
      before === undefined ? entryCorrection : correctEntry(before, entryCorrection, path, sourcePath, places)
    if (before === undefined) places.set(path, sourcePath)
  }
  const replacedFields = REPLACED_FIELDS.filter((key) => correction[key] !== undefined)
  for (const key of replacedFields) places.set(`/${key}`, `${from}/${key}`)
  if (corrected.date !== undefined) places.set('/date', `${from}/corrected/date`)
  for (const meter of Object.keys(corrected.readings ?? {}))
    places.set(`/readings/${meter}`, `${from}/corrected/readings/${meter}`)
  return dropUndefined({
    ...record,
    date: corrected.date ?? record.date,
    readings: { ...record.readings, ...corrected.readings },
    entries,
    shields:
      shields.length === 0
        ? record.shields
        : mergeList(record.shields ?? [], shields, '/shields', `${from}/shields`, places),
    ...Object.fromEntries(replacedFields.map((key) => [key, correction[key]])),
  })
}

/** Stated values replace the earlier ones. List items are matched by the part of the machine. */
function correctEntry(
  before: RecordEntry,
  correction: RecordEntry,
  path: JsonPointer,
  sourcePath: JsonPointer,
  places: Map<JsonPointer, JsonPointer>,
): RecordEntry {
  const after: UnknownFields = { ...before }
  for (const [key, value] of Object.entries(correction)) {
    const at = `${path}/${key}`
    const from = `${sourcePath}/${key}`
    if (MERGED_LISTS.includes(key)) {
      const list = (after[key] ?? []) as readonly unknown[]
      after[key] = mergeList(list, value as readonly unknown[], at, from, places)
    } else {
      // A correction may add only the result of a sample.
      after[key] = key === 'sample' ? { ...before.sample, ...correction.sample } : value
      places.set(at, from)
    }
  }
  return after as unknown as RecordEntry
}

function mergeList<Item>(
  before: readonly Item[],
  corrections: readonly Item[],
  path: JsonPointer,
  sourcePath: JsonPointer,
  places: Map<JsonPointer, JsonPointer>,
): readonly Item[] {
  const after = [...before]
  for (const [number, item] of corrections.entries()) {
    const foundIndex = after.findIndex((currentItem) => identifyPart(currentItem) === identifyPart(item))
    const at = foundIndex === -1 ? after.length : foundIndex
    after[at] = item
    places.set(`${path}/${at}`, `${sourcePath}/${number}`)
  }
  return after
}

/** The part of the machine that an item refers to. */
function identifyPart(item: unknown): string {
  if (typeof item === 'string') return item
  const { on, wheelMark = '' } = item as { readonly on: JsonPointer; readonly wheelMark?: string }
  return `${on} ${wheelMark}`
}
