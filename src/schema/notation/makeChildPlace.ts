import { type JsonPointer, joinPointer } from '../../base/index.js'
import type { Place } from './placeTable.js'

/** The place of a key or a list entry. */
export function makeChildPlace(place: Place, id: string): Place {
  const full = appendKey(place.full, id)
  const path = place.sharesPath ? place.path : place.path === place.full ? full : appendKey(place.path, id)
  return { ...place, full, path, id }
}

/** Appends a key to a pointer. */
export const appendKey = (path: JsonPointer, key: string): JsonPointer =>
  /[~/]/.test(key) ? path + joinPointer([key]) : `${path}/${key}`
