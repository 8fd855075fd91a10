import type { JsonPointer } from '../../base/index.js'
import { findLeaves, type SpecSheet, type Tightening } from '../../spec/index.js'
import { type PartAt, sheetParts } from './sheetParts.js'

/** A tightening as written, on the sheet or in an override, with the part that it is for. */
export interface TighteningAt {
  readonly path: JsonPointer
  readonly tightening: Tightening
  readonly on: PartAt
}

/** Every tightening of a sheet, those of overrides too, each with the part that it tightens. */
export function sheetTightenings(sheet: SpecSheet): readonly TighteningAt[] {
  const parts = sheetParts(sheet)
  return findLeaves(sheet).flatMap((found) => {
    if (found.kind !== 'tightening') return []
    const place = found.replaces ?? found.path
    const on = parts.find((part) => place.startsWith(`${part.path}/`))
    return on === undefined ? [] : [{ path: found.path, tightening: found.leaf, on }]
  })
}
