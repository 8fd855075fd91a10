import type { JsonPointer } from '../../base/index.js'
import type { FoundLeaf, SpecValue, StatedValue } from '../../spec/index.js'

/** Two stated values that hold for the same machines, and the place of the one that this block changes. */
export interface ValuePair {
  readonly path: JsonPointer
  readonly one: StatedValue
  readonly other: StatedValue
}

/**
 * Two values of a sheet side by side, for rules that compare them: once as the sheet has them, and once for
 * each override that sets one of the two, with the sheet's own for what it leaves alone.
 */
export function pairValues(
  all: readonly FoundLeaf[],
  one: JsonPointer,
  other: JsonPointer,
): readonly ValuePair[] {
  const leaves = new Map<string, { readonly path: JsonPointer; readonly leaf: SpecValue }>()
  const blocks = new Set<string>()
  for (const found of all) {
    const place = found.replaces ?? found.path
    if (found.kind !== 'value' || (place !== one && place !== other)) continue
    const block = blockOf(found.path)
    blocks.add(block)
    if (!leaves.has(block + place)) leaves.set(block + place, found)
  }
  const at = (place: JsonPointer, block: string) => leaves.get(block + place)
  return [...blocks].flatMap((block) => {
    const changed = at(one, block) ?? at(other, block)
    const first = at(one, block) ?? at(one, '')
    const second = at(other, block) ?? at(other, '')
    if (changed === undefined || first === undefined || second === undefined) return []
    if (first.leaf.kind === 'not stated' || second.leaf.kind === 'not stated') return []
    return [{ path: changed.path, one: first.leaf, other: second.leaf }]
  })
}

/** The override that a leaf is in; `''` on the sheet itself. */
function blockOf(path: JsonPointer): string {
  return /^\/overrides\/[0-9]+/.exec(path)?.[0] ?? ''
}
