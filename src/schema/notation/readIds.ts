import { FORBIDDEN_KEYS, ID_PATTERN } from '../shapes/textShapes.js'
import { appendKey } from './makeChildPlace.js'
import type { Expander, Place } from './placeTable.js'

/** Reads `[left, right]` as a record of objects with only a name. */
export function readIds(value: unknown, place: Place, { places }: Expander): unknown {
  const isIds = Array.isArray(value) && new Set(value).size === value.length && value.every(isId)
  if (!isIds) return value
  for (const [at, id] of value.entries())
    places.push({ full: appendKey(place.full, id), path: appendKey(place.path, String(at)) })
  return Object.fromEntries(value.map((id) => [id, {}]))
}

const isId = (value: unknown): value is string =>
  typeof value === 'string' && ID_PATTERN.test(value) && !FORBIDDEN_KEYS.includes(value)
