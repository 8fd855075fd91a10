import { type JsonPointer, splitPointer } from '../base/index.js'
import type { Id, Leaf, LeafKind, LeafRole, Resolved, SpecSheet } from '../spec/index.js'
import { findLeafRow, findLeaves, requireDocument, resolveLeaf } from '../spec/index.js'
import { describePart, type PartName } from './names.js'

/** A figure that differs between the variants of a sheet. */
export interface VariantDifference {
  readonly kind: LeafKind
  readonly role: LeafRole
  readonly part: PartName
  readonly path: JsonPointer
  readonly variants: readonly {
    readonly variant: Id
    readonly name: string
    readonly resolved: Resolved<Leaf>
  }[]
}

/**
 * Lists the figures in which the variants of one sheet differ, in the order of the sheet, each with the figure of each
 * variant.
 *
 * @param sheet - a parsed sheet
 * @throws TypeError if `sheet` is not a spec sheet
 *
 * @example
 * ```ts
 * import { listVariantDifferences } from 'drivetrain-service/v1/service'
 * const machine = { make: 'Invented', model: 'Example', type: 'carrier', variants: { only: { name: 'Only' } }, axles: {}, supports: {} }
 * const sheet = { kind: 'spec-sheet', version: '1.0', id: 'example', revision: '1', machine, sources: {}, gearcases: {}, services: {} } as const
 * // How many figures differ if there is only one variant?
 * listVariantDifferences(sheet).length // => 0
 * ```
 */
export function listVariantDifferences(sheet: SpecSheet): readonly VariantDifference[] {
  requireDocument('sheet', sheet, 'spec-sheet')
  const variants = Object.entries(sheet.machine.variants)
  const places = new Map<JsonPointer, LeafKind>()
  for (const { path, kind, replaces } of findLeaves(sheet)) places.set(replaces ?? path, kind)
  return [...places].flatMap(([path, kind]): readonly VariantDifference[] => {
    const found = variants.map(([variant, { name }]) => ({
      variant,
      name,
      resolved: resolveLeaf(sheet, { variant }, kind, path),
    }))
    const texts = new Set(found.map(({ resolved }) => JSON.stringify(withoutSource(resolved))))
    const role = findLeafRow(splitPointer(path) ?? [])?.role
    if (texts.size < 2 || role === undefined) return []
    return [{ kind, role, part: describePart(sheet, path), path, variants: found }]
  })
}

function withoutSource(resolved: Resolved<Leaf>): unknown {
  if (resolved.kind !== 'stated') return resolved.kind
  const { source: _source, ...leaf } = resolved.value
  return leaf
}
