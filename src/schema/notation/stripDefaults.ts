import { isSameJson } from '../../base/index.js'
import { asHolder, type DefaultContext, findChildNode, type Holder, type PlaceNode } from './placeTable.js'

/** Removes the keys of a value that reading would fill in with the same values. */
export function stripDefaults(
  value: unknown,
  node: PlaceNode,
  { id, root, gearcase: above }: Pick<DefaultContext, 'id' | 'root' | 'gearcase'>,
): unknown {
  if (Array.isArray(value)) {
    const entry = node.children['*']
    if (entry === undefined) return value
    return value.map((one, at) => stripDefaults(one, entry, { id: String(at), root, gearcase: above }))
  }
  const holder = asHolder(value)
  if (holder === undefined) return value
  const isGearcase = asHolder(root['gearcases'])?.[id] === holder
  const gearcase = isGearcase ? holder : above
  const remaining: Holder = {}
  for (const [key, one] of Object.entries(holder)) {
    const child = findChildNode(node, key)
    const stripped = child === undefined ? one : stripDefaults(one, child, { id: key, root, gearcase })
    const makeDefault = node.row.defaults?.[key] ?? node.row.lateDefaults?.[key]
    const defaultValue = makeDefault?.({ id, holder, root, gearcase })
    const isDefault =
      defaultValue !== undefined && (isSameJson(defaultValue, one) || isSameJson(defaultValue, stripped))
    if (!isDefault) remaining[key] = stripped
  }
  return remaining
}
