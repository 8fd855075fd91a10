import { type JsonPointer, suggestName } from '../../base/index.js'

/** A reader does not look through more. */
const MAX_NAMED = 8

/** A place that names something by its id, and the ids that exist. */
export interface NameAt {
  readonly path: JsonPointer
  readonly id: string
  readonly known: readonly string[]
}

/** A finding for each name that does not exist. */
export const unknownNames = (names: readonly NameAt[]) =>
  names.flatMap(({ path, id, known }) => (known.includes(id) ? [] : [unknownName(path, id, known)]))

/** The finding for a name that does not exist, with the name probably meant as a cure. */
function unknownName(path: JsonPointer, id: string, known: readonly string[]) {
  const meant = suggestName(id, known)
  const cures = meant === undefined ? [] : [{ op: 'replace' as const, path, value: meant }]
  const more = Math.max(0, known.length - MAX_NAMED)
  return { path, params: { id, known: known.slice(0, MAX_NAMED), more, meant }, cures }
}
