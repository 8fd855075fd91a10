import { appendKey, makeChildPlace } from './makeChildPlace.js'
import type { Notation } from './notation.js'
import type { Expander, Holder, Place } from './placeTable.js'
import { readEntry } from './readEntry.js'

/** Reads a list of parts that is written as a map from their pointers `on` to texts. */
export function readByPointer(map: Holder, notation: Notation, place: Place, expander: Expander): unknown {
  return Object.entries(map).map(([on, text], at) => {
    const entry = { ...makeChildPlace(place, String(at)), path: appendKey(place.path, on) }
    const read = readEntry(text, notation, entry, expander)
    return read === null ? null : { on, ...read }
  })
}
