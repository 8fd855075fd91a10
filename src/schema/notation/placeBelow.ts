import { type JsonPointer, joinPointer } from '../../base/index.js'
import type { Place } from './placeTable.js'

/** The place of a key or an entry. */
export function placeBelow(place: Place, id: string): Place {
  const { isWhole, section, gearcase } = place
  const full = pointerBelow(place.full, id)
  const path = isWhole ? place.path : place.path === place.full ? full : pointerBelow(place.path, id)
  return { full, path, isWhole, id, section, gearcase }
}

/** The pointer of a key below another. */
export const pointerBelow = (path: JsonPointer, key: string): JsonPointer =>
  /[~/]/.test(key) ? path + joinPointer([key]) : `${path}/${key}`
