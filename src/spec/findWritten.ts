import type { JsonPointer } from '../base/index.js'

/** A part of a text in short notation; `path` is the pointer of its value below the value of the whole text. */
export interface TextPart {
  readonly path: JsonPointer
  readonly from: number
  readonly to: number
}

/** Where one place of the full form is in the document as written. */
export interface WrittenPlace {
  /** The place in the full form. */
  readonly full: JsonPointer
  /** The text, the object that is only moved, or the object that leaves the key out. */
  readonly path: JsonPointer
  /** The parts of a text. */
  readonly parts?: readonly TextPart[]
  /** What is below the place is also below the written one. */
  readonly moved?: true
}

/** Where the places of a full sheet were written, for all that were written elsewhere or as a text. */
export type WrittenPlaces = readonly WrittenPlace[]

/** Where a place of the full form was written: the pointer, and the characters where a text is there. */
export function findWritten(
  places: WrittenPlaces,
  full: JsonPointer,
): { readonly path: JsonPointer; readonly range?: readonly [from: number, to: number] } {
  const place = findDeepest(places, full, (one) => one.full)
  if (place === undefined) return { path: full }
  const pointerBelow = full.slice(place.full.length)
  if (place.moved === true) return { path: place.path + pointerBelow }
  const part = findDeepest(place.parts ?? [], pointerBelow, (one) => one.path)
  return part === undefined ? { path: place.path } : { path: place.path, range: [part.from, part.to] }
}

/** Of the places at or above one, the nearest; of two alike, the one that was noted last. */
function findDeepest<Entry>(
  entries: readonly Entry[],
  path: JsonPointer,
  pointerOf: (entry: Entry) => JsonPointer,
): Entry | undefined {
  let found: Entry | undefined
  for (const entry of entries) {
    const place = pointerOf(entry)
    const isAtOrAbove = path === place || path.startsWith(`${place}/`)
    if (isAtOrAbove && (found === undefined || place.length >= pointerOf(found).length)) found = entry
  }
  return found
}
