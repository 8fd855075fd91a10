import { type JsonPointer, joinPointer, requireObject, requireShape, type Shape } from '../base/index.js'
import type { LeafKind, Leaves } from './leaf.js'
import { type LocatedLeafRow, listLeafTypes } from './leafTable.js'
import type { Override, SpecSheet } from './specSheet.js'

/** A leaf of a sheet as written. For a leaf in an override, `replaces` is the pointer of the base leaf. */
export type FoundLeaf = {
  readonly [Kind in LeafKind]: {
    readonly kind: Kind
    readonly path: JsonPointer
    readonly leaf: Leaves[Kind]
    readonly replaces?: JsonPointer
  }
}[LeafKind]

/**
 * Every leaf of a sheet with its kind and pointer, in the order of the document, then the leaves of the
 * overrides. Throws TypeError if `sheet` is not an object or its overrides have a wrong shape.
 */
export function findLeaves(sheet: SpecSheet): readonly FoundLeaf[] {
  requireObject('sheet', sheet)
  const found: FoundLeaf[] = []
  collectLeaves(sheet, [], listLeafTypes(), found)
  for (const [overridePlace, override] of readOverrides(sheet).entries())
    for (const [place, { kind, path, to }] of override.set.entries())
      found.push({
        kind,
        path: joinPointer(['overrides', overridePlace, 'set', place, 'to']),
        leaf: to,
        replaces: path,
      } as FoundLeaf)
  return found
}

function collectLeaves(
  holder: object,
  tokens: readonly string[],
  places: readonly LocatedLeafRow[],
  found: FoundLeaf[],
): void {
  for (const [key, value] of Object.entries(holder)) {
    const below = places.filter(({ place }) => place[tokens.length] === '*' || place[tokens.length] === key)
    if (below.length === 0 || typeof value !== 'object' || value === null) continue
    const path = [...tokens, key]
    const row = below.find(({ place }) => place.length === path.length)
    if (row !== undefined) found.push({ kind: row.kind, path: joinPointer(path), leaf: value } as FoundLeaf)
    else collectLeaves(value, path, below, found)
  }
}

const OVERRIDES_SHAPE: Shape = [{ when: {}, set: [{ kind: 'string', path: 'string', to: {} }] }]

/** The overrides of a sheet in order, or an empty list. */
export function readOverrides({ overrides = [] }: SpecSheet): readonly Override[] {
  requireShape('sheet.overrides', overrides, OVERRIDES_SHAPE)
  return overrides
}
