import type { JsonPointer } from '../base/index.js'
import type { Id, Leaf, LeafKind, Resolved, SpecSheet } from '../spec/index.js'
import { findLeaves, requireDocument, resolveLeaf } from '../spec/index.js'

/** A figure that differs between the variants of a sheet. */
export interface VariantDifference {
  readonly kind: LeafKind
  readonly path: JsonPointer
  readonly variants: readonly {
    readonly variant: Id
    readonly name: string
    readonly resolved: Resolved<Leaf>
  }[]
}

/** Lists the figures in which the variants of one sheet differ, in the order of the sheet. */
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
    return texts.size > 1 ? [{ kind, path, variants: found }] : []
  })
}

function withoutSource(resolved: Resolved<Leaf>): unknown {
  if (resolved.kind !== 'stated') return resolved.kind
  const { source: _source, ...leaf } = resolved.value
  return leaf
}
