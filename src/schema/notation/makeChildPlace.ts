import { type JsonPointer, joinPointer } from '../../base/index.js'
import type { Place } from './placeTable.js'

/** The place of a key or an entry. */
export function makeChildPlace(place: Place, id: string): Place {
  const { sharesPath, section, gearcase } = place
  const full = appendKey(place.full, id)
  const path = sharesPath ? place.path : place.path === place.full ? full : appendKey(place.path, id)
  return { full, path, sharesPath, id, section, gearcase }
}

/** The pointer of a key below another. */
export const appendKey = (path: JsonPointer, key: string): JsonPointer =>
  /[~/]/.test(key) ? path + joinPointer([key]) : `${path}/${key}`
