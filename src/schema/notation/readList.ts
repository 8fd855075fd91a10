import { makeChildPlace } from './makeChildPlace.js'
import type { Notation } from './notation.js'
import type { Expander, Place, PlaceNode } from './placeTable.js'
import { readEntry } from './readEntry.js'
import { readNotation } from './readNotation.js'

/** Reads a list of texts as one object, in the notation that fits most of them. */
export function readList(
  list: readonly unknown[],
  { row, lists: [first, ...others] = [] }: PlaceNode,
  place: Place,
  expander: Expander,
): unknown {
  const { places } = expander
  const countFits = (notation: Notation) =>
    list.filter((text) => typeof text === 'string' && readNotation(notation, text).ok).length
  const bestNotation = others.find((notation) => first && countFits(notation) > countFits(first)) ?? first
  if (bestNotation === undefined || row.collect === undefined) return list
  const placeCount = places.length
  const values = list.map((text, at) =>
    readEntry(text, bestNotation, makeChildPlace(place, String(at)), expander),
  )
  const texts = places.slice(placeCount)
  const { value, places: collected } = row.collect(values.filter((item) => item !== null))
  for (const { full, of, part } of collected) {
    const { path = place.path, parts = [] } = texts[of] ?? {}
    const ownParts = parts.filter((item) => item.path === part || item.path.startsWith(`${part}/`))
    places.push({
      full: place.full + full,
      path,
      parts: ownParts.map((item) => ({ ...item, path: item.path.slice(part.length) })),
    })
  }
  return value
}
