import type { JsonPointer } from '../../base/index.js'
import type { Seal, SpecSheet, Stock } from '../../spec/index.js'
import { sheetSeals } from './sheetSeals.js'

/** A seal of a sheet or of a shelf, with the name of what it seals or of its place on the shelf. */
export interface NamedSeal {
  readonly path: JsonPointer
  readonly seal: Seal
  readonly name: string
}

/** The seals of a sheet or of a stock, for rules on the seal alone. */
export function documentSeals(document: SpecSheet | Stock): readonly NamedSeal[] {
  if (document.kind === 'spec-sheet')
    return sheetSeals(document).map(({ path, seal, on }) => ({ path, seal, name: on.name }))
  return Object.entries(document.seals).map(([id, { name, seal }]) => ({
    path: `/seals/${id}/seal`,
    seal,
    name,
  }))
}
