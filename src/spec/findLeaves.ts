import type { JsonPointer, Shape } from '../base/index.js'
import { appendKey, requireObject, requireShape, requireTree } from '../base/index.js'
import type { LeafKind, Leaves } from './leaf.js'
import { findBranch, type LeafTree } from './leafTable.js'
import type { Override, SpecSheet } from './specSheet.js'
import type { StatedValue } from './specValue.js'

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
  collectLeaves(sheet, '', undefined, found)
  for (const [overridePlace, override] of readOverrides(sheet).entries())
    for (const [place, { kind, path, to }] of override.set.entries())
      found.push({
        kind,
        path: `/overrides/${overridePlace}/set/${place}/to`,
        leaf: to,
        replaces: path,
      } as FoundLeaf)
  return found
}

function collectLeaves(
  holder: object,
  path: JsonPointer,
  branch: LeafTree | undefined,
  found: FoundLeaf[],
): void {
  for (const key of Object.keys(holder)) {
    const value = (holder as Readonly<Record<string, unknown>>)[key]
    const below = findBranch(key, branch)
    if (below === undefined || typeof value !== 'object' || value === null) continue
    const at = appendKey(path, key)
    if (below instanceof Map) collectLeaves(value, at, below, found)
    else found.push({ kind: below.kind, path: at, leaf: value } as FoundLeaf)
  }
}

const OVERRIDES_SHAPE: Shape = [{ when: {}, set: [{ kind: 'string', path: 'string', to: {} }] }]

/** The overrides of a sheet in order, or an empty list. */
export function readOverrides({ overrides = [] }: SpecSheet): readonly Override[] {
  requireShape('sheet.overrides', overrides, OVERRIDES_SHAPE)
  return overrides
}

/** A stated value with its unit and other printed figures. */
export interface FoundValue {
  readonly path: JsonPointer
  readonly value: StatedValue
}

/**
 * Every stated value of a sheet, including those inside leaves: torques, stages, bead widths, cure times.
 * `printed` entries stay with their value. Throws TypeError if a leaf is nested deeper than 32 levels.
 */
export function findStatedValues(
  sheet: SpecSheet,
  leaves: readonly FoundLeaf[] = findLeaves(sheet),
): readonly FoundValue[] {
  const found: FoundValue[] = []
  for (const { leaf, path } of leaves) {
    requireTree(path, leaf)
    collectValues(leaf, path, found)
  }
  return found
}

const STATED_KINDS: readonly unknown[] = ['nominal', 'nominal with tolerance', 'limits']

function collectValues(holder: object, path: JsonPointer, found: FoundValue[]): void {
  if ('kind' in holder && STATED_KINDS.includes(holder.kind)) {
    found.push({ path, value: holder as StatedValue })
    return
  }
  for (const key of Object.keys(holder)) {
    const value = (holder as Readonly<Record<string, unknown>>)[key]
    if (typeof value === 'object' && value !== null) collectValues(value, appendKey(path, key), found)
  }
}
