import type { JsonPointer } from '../../base/index.js'
import { findLeaves, type Seal, type SpecSheet } from '../../spec/index.js'
import { type PartAt, sheetParts } from './sheetParts.js'

/** A seal as written, on the sheet or in an override, with the part that it seals. */
export interface SealAt {
  readonly path: JsonPointer
  readonly seal: Seal
  readonly on: PartAt
}

/** Every seal of a sheet, those of overrides too, each with the opening or cover that it seals. */
export function sheetSeals(sheet: SpecSheet): readonly SealAt[] {
  const parts = sheetParts(sheet)
  return findLeaves(sheet).flatMap((found) => {
    if (found.kind !== 'seal') return []
    const place = found.replaces ?? found.path
    const on = parts.find((part) => place.startsWith(`${part.path}/`))
    return on === undefined ? [] : [{ path: found.path, seal: found.leaf, on }]
  })
}
