import { type JsonPointer, suggestName } from '../../base/index.js'

/** A longer list would not help a reader. */
const MAX_KNOWN_IDS = 8

/** An id, its pointer, and the ids that exist. */
export interface IdToCheck {
  readonly path: JsonPointer
  readonly id: string
  readonly known: readonly string[]
}

/** One finding for each id that does not exist. */
export const findUnknownIds = (names: readonly IdToCheck[]) =>
  names.flatMap(({ path, id, known }) => (known.includes(id) ? [] : [reportUnknownId(path, id, known)]))

/** The finding for an id that does not exist, with the probable id as a fix. */
function reportUnknownId(path: JsonPointer, id: string, known: readonly string[]) {
  const meant = suggestName(id, known)
  const fixes = meant === undefined ? [] : [{ op: 'replace' as const, path, value: meant }]
  const more = Math.max(0, known.length - MAX_KNOWN_IDS)
  return { path, params: { id, known: known.slice(0, MAX_KNOWN_IDS), more, meant }, cures: fixes }
}

/** A property of a record by id; inherited ones, such as `constructor`, are not found. */
export function lookUp<T>(record: Readonly<Record<string, T>> | undefined, id: string): T | undefined {
  return record !== undefined && Object.hasOwn(record, id) ? record[id] : undefined
}
