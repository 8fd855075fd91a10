import type { JsonPointer } from '../../base/index.js'
import type { Seal, SpecSheet, Stock } from '../../spec/index.js'
import type { SheetIndex } from './indexSheet.js'

/** The seals of a sheet or a stock, each with the name of what it seals or of its place on the shelf. */
export function namedSeals(
  document: SpecSheet | Stock,
  sheet: SheetIndex | undefined,
): readonly { readonly path: JsonPointer; readonly seal: Seal; readonly name: string }[] {
  if (document.kind === 'stock')
    return Object.entries(document.seals).map(([id, one]) => ({ ...one, path: `/seals/${id}/seal` }))
  return (sheet?.seals ?? []).map(({ path, seal, on }) => ({ path, seal, name: on.name }))
}
