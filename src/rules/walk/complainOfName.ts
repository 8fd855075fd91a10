import type { JsonPointer } from '../../finding.js'
import { suggestName } from '../../spec/suggestName.js'

/** A complaint about a name that nothing has: what there is instead, and the likely one as a cure. */
export function complainOfName(path: JsonPointer, id: string, known: readonly string[]) {
  const meant = suggestName(id, known)
  const cures = meant === undefined ? [] : [{ op: 'replace' as const, path, value: meant }]
  return { path, params: { id, known, meant }, cures }
}
