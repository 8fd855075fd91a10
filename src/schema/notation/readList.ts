import type { Notation } from './notation.js'
import { placeBelow } from './placeBelow.js'
import type { Expander, Place, PlaceNode } from './placeTable.js'
import { readEntry } from './readEntry.js'
import { readNotation } from './readNotation.js'

/** A list of texts that are one object, in the notation that fits most of them. */
export function readList(
  list: readonly unknown[],
  { row, lists: [first, ...others] = [] }: PlaceNode,
  place: Place,
  expander: Expander,
): unknown {
  const { places } = expander
  const fits = (notation: Notation) =>
    list.filter((text) => typeof text === 'string' && readNotation(notation, text).ok).length
  const best = others.find((notation) => first && fits(notation) > fits(first)) ?? first
  if (best === undefined || row.collect === undefined) return list
  const before = places.length
  const read = list.map((text, at) => readEntry(text, best, placeBelow(place, String(at)), expander))
  const texts = places.slice(before)
  const { value, places: collected } = row.collect(read.filter((one) => one !== null))
  for (const { full, of, part } of collected) {
    const { path = place.path, parts = [] } = texts[of] ?? {}
    const own = parts.filter((one) => one.path === part || one.path.startsWith(`${part}/`))
    places.push({
      full: place.full + full,
      path,
      parts: own.map((one) => ({ ...one, path: one.path.slice(part.length) })),
    })
  }
  return value
}
