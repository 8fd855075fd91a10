import type { JsonPointer } from '../../base/index.js'
import type { Cover, Filter, Gearcase, Opening, Shield, SpecSheet } from '../../spec/index.js'

/**
 * An opening, cover, filter or shield of a sheet, with its pointer. The name follows that of its gearcase.
 */
export type SheetPart = {
  readonly path: JsonPointer
  readonly name: string
} & (
  | { readonly kind: 'opening'; readonly part: Opening; readonly gearcase: Gearcase }
  | { readonly kind: 'cover'; readonly part: Cover; readonly gearcase: Gearcase }
  | { readonly kind: 'filter'; readonly part: Filter; readonly gearcase: Gearcase }
  | { readonly kind: 'shield'; readonly part: Shield }
)

/** All parts of a sheet that are opened and tightened, in the order of the document. */
export function listSheetParts({ gearcases, shields = {} }: SpecSheet): readonly SheetPart[] {
  return [
    ...Object.entries(gearcases).flatMap(([id, gearcase]): SheetPart[] => {
      const describePart = (list: string, key: string, { name }: Opening | Cover | Filter) => ({
        path: `/gearcases/${id}/${list}/${key}`,
        name: `${gearcase.name}, ${name}`,
        gearcase,
      })
      const { openings, covers = {}, filters = {} } = gearcase
      return [
        ...Object.entries(openings).map(
          ([key, part]) => ({ ...describePart('openings', key, part), kind: 'opening', part }) as const,
        ),
        ...Object.entries(covers).map(
          ([key, part]) => ({ ...describePart('covers', key, part), kind: 'cover', part }) as const,
        ),
        ...Object.entries(filters).map(
          ([key, part]) => ({ ...describePart('filters', key, part), kind: 'filter', part }) as const,
        ),
      ]
    }),
    ...Object.entries(shields).map(
      ([key, part]) => ({ path: `/shields/${key}`, name: part.name, kind: 'shield', part }) as const,
    ),
  ]
}
