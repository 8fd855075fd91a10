import type { JsonPointer } from '../../base/index.js'
import type { Cover, Gearcase, Opening, Shield, SpecSheet } from '../../spec/index.js'

/** An opening, cover or shield of a sheet, its place, and its name after its gearcase's. */
export type PartAt = {
  readonly path: JsonPointer
  readonly name: string
} & (
  | { readonly kind: 'opening'; readonly part: Opening; readonly gearcase: Gearcase }
  | { readonly kind: 'cover'; readonly part: Cover; readonly gearcase: Gearcase }
  | { readonly kind: 'shield'; readonly part: Shield }
)

/** Everything on a sheet that is opened and tightened, in document order. */
export function sheetParts(sheet: SpecSheet): readonly PartAt[] {
  return [
    ...Object.entries(sheet.gearcases).flatMap(([id, gearcase]): PartAt[] => [
      ...Object.entries(gearcase.openings).map(([key, part]) => ({
        path: `/gearcases/${id}/openings/${key}`,
        name: `${gearcase.name}, ${part.name}`,
        kind: 'opening' as const,
        part,
        gearcase,
      })),
      ...Object.entries(gearcase.covers ?? {}).map(([key, part]) => ({
        path: `/gearcases/${id}/covers/${key}`,
        name: `${gearcase.name}, ${part.name}`,
        kind: 'cover' as const,
        part,
        gearcase,
      })),
    ]),
    ...Object.entries(sheet.shields ?? {}).map(
      ([key, part]): PartAt => ({
        path: `/shields/${key}`,
        name: part.name,
        kind: 'shield',
        part,
      }),
    ),
  ]
}
