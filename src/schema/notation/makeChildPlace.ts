import { type JsonPointer, joinPointer } from '../../base/index.js'
import type { Place } from './placeTable.js'

/** The place of a key or a list entry. */
export function makeChildPlace(place: Place, id: string): Place {
  const { sharesPath, section, gearcase } = place
  const full = appendKey(place.full, id)
  const path = sharesPath ? place.path : place.path === place.full ? full : appendKey(place.path, id)
  return { full, path, sharesPath, id, section, gearcase }
}

/** Appends a key to a pointer. */
export const appendKey = (path: JsonPointer, key: string): JsonPointer =>
  /[~/]/.test(key) ? path + joinPointer([key]) : `${path}/${key}`
