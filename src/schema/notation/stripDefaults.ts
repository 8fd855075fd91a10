import { isSameJson } from '../../base/index.js'
import { asHolder, type Holder, type LeftOutAt, nodeBelow, type PlaceNode } from './placeTable.js'

/** A value without the keys that reading fills in with the same. */
export function stripDefaults(
  value: unknown,
  node: PlaceNode,
  { id, root, gearcase: above }: Pick<LeftOutAt, 'id' | 'root' | 'gearcase'>,
): unknown {
  if (Array.isArray(value)) {
    const entry = node.below['*']
    if (entry === undefined) return value
    return value.map((one, at) => stripDefaults(one, entry, { id: String(at), root, gearcase: above }))
  }
  const holder = asHolder(value)
  if (holder === undefined) return value
  const isGearcase = asHolder(root['gearcases'])?.[id] === holder
  const gearcase = isGearcase ? holder : above
  const left: Holder = {}
  for (const [key, one] of Object.entries(holder)) {
    const below = nodeBelow(node, key)
    const stripped = below === undefined ? one : stripDefaults(one, below, { id: key, root, gearcase })
    const leftOut = node.row.leftOut?.[key] ?? node.row.leftOutLast?.[key]
    const given = leftOut?.({ id, holder, root, gearcase })
    const isDefault = given !== undefined && (isSameJson(given, one) || isSameJson(given, stripped))
    if (!isDefault) left[key] = stripped
  }
  return left
}
