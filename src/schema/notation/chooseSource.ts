import type { SourceRef } from '../../spec/index.js'
import { asObject, findChildNode, type Holder, type PlaceNode } from './placeTable.js'

/**
 * A source in a section. `isDirect`: it belongs to the section's own text, not to that of an inner section.
 */
interface FoundSource {
  readonly source: SourceRef | undefined
  readonly isDirect: boolean
}

/**
 * The source to write once for a section: the most frequent source of its own texts. Undefined if any text
 * has no source, since it would get this one.
 */
export function chooseSource(
  holder: Holder,
  node: PlaceNode,
  { section }: { readonly section: Partial<SourceRef> | undefined },
): SourceRef | undefined {
  if (!node.section) return undefined
  const found = findSources(holder, node, true, true)
  if (found.some(({ source }) => source === undefined)) return undefined
  const counts = new Map<string, number>()
  for (const { source, isDirect } of found)
    if (isDirect) counts.set(JSON.stringify(source), (counts.get(JSON.stringify(source)) ?? 0) + 1)
  const [best, count] = [...counts].toSorted(([, first], [, second]) => second - first)[0] ?? []
  if (best === undefined || count === undefined || count < 2 || best === JSON.stringify(section))
    return undefined
  return JSON.parse(best)
}

/** Notations whose texts use the source of their section. */
const TAKES_SOURCE: ReadonlySet<string | undefined> = /* @__PURE__ */ new Set([
  'volume',
  'length',
  'temperature',
  'mass',
  'minutes',
  'tightening',
  'oils',
  'seal',
  'interval',
  'window',
  'place',
  'position',
])

function findSources(
  value: unknown,
  node: PlaceNode,
  isDirect: boolean,
  isTopLevel = false,
): readonly FoundSource[] {
  const isDirectHere = isDirect && (isTopLevel || !node.section)
  if (Array.isArray(value)) {
    const entry = node.children?.['*']
    return entry === undefined ? [] : value.flatMap((inner) => findSources(inner, entry, isDirectHere))
  }
  const holder = asObject(value)
  if (holder === undefined) return []
  const { kind, source, bead, cureBeforeOil } = holder
  const isFactor = node.text === 'severeUse' && kind === 'factor'
  const takesSource = TAKES_SOURCE.has(node.text) || isFactor
  if (takesSource) {
    const leaves = [holder, bead, cureBeforeOil].map(asObject)
    const stated = leaves.filter((leaf) => leaf !== undefined && leaf['kind'] !== 'not stated')
    return kind === 'not stated'
      ? []
      : stated.map((leaf) => ({
          source: (leaf?.['source'] ?? (leaf === holder ? source : undefined)) as SourceRef | undefined,
          isDirect: isDirectHere,
        }))
  }
  return Object.entries(holder).flatMap(([key, inner]) => {
    const below = findChildNode(node, key)
    return below === undefined ? [] : findSources(inner, below, isDirectHere)
  })
}
