import type { DocumentReference, FindingOf, JsonPointer } from '../base/index.js'

/**
 * A part of a string in short notation. `path` is the pointer of its value, relative to the value of the whole
 * text.
 */
export interface TextPart {
  readonly path: JsonPointer
  readonly from: number
  readonly to: number
}

/** The place of one part of the full form in the document as written. */
export interface WrittenPlace {
  /** The pointer in the full form. */
  readonly full: JsonPointer
  /** The pointer as written: to the text, to the moved object, or to the object that omits the key. */
  readonly path: JsonPointer
  /** The parts of a text in short notation, by position. */
  readonly parts?: readonly TextPart[]
  /** The object was moved whole: pointers below it keep their ends. */
  readonly moved?: true
}

/** The places of the parts of a full document that were written elsewhere or as text. */
export type WrittenPlaces = readonly WrittenPlace[]

/** The written pointer of a pointer in the full form, with the range of characters if it is inside a text. */
export function findWritten(
  places: WrittenPlaces,
  full: JsonPointer,
): { readonly path: JsonPointer; readonly range?: readonly [from: number, to: number] } {
  const place = findNearest(indexPlaces(places), full)
  if (place === undefined) return { path: full }
  const relativePointer = full.slice(place.full.length)
  if (place.moved === true) return { path: place.path + relativePointer }
  const part = findNearest(
    new Map(place.parts?.map((candidate) => [candidate.path, candidate])),
    relativePointer,
  )
  return part === undefined ? { path: place.path } : { path: place.path, range: [part.from, part.to] }
}

/** A document may have a place and a finding for each of its many parts. */
const placesByPointer = /* @__PURE__ */ new WeakMap<WrittenPlaces, ReadonlyMap<JsonPointer, WrittenPlace>>()

function indexPlaces(places: WrittenPlaces): ReadonlyMap<JsonPointer, WrittenPlace> {
  const known = placesByPointer.get(places)
  if (known !== undefined) return known
  const index = new Map(places.map((place) => [place.full, place]))
  placesByPointer.set(places, index)
  return index
}

/** Whether the part of the full form at exactly this pointer was written elsewhere. */
export function isMoved(places: WrittenPlaces, full: JsonPointer): boolean {
  return (indexPlaces(places).get(full)?.path ?? full) !== full
}

/** The entry whose pointer is nearest, at or above `path`. */
function findNearest<Entry>(entries: ReadonlyMap<JsonPointer, Entry>, path: JsonPointer): Entry | undefined {
  for (let pointer = path; ; pointer = pointer.slice(0, pointer.lastIndexOf('/'))) {
    const entry = entries.get(pointer)
    if (entry !== undefined || pointer === '') return entry
  }
}

/**
 * Moves a finding from the full form of a document to the document as written. Fixes that cannot be moved are
 * dropped.
 */
export function moveToWritten<Found extends FindingOf<string, unknown>>(
  finding: Found,
  findPlaces: (document: DocumentReference) => WrittenPlaces,
): Found {
  const places = findPlaces(finding.document)
  const { related: others, cures: fixes, ...rest } = finding
  const related = others?.map((place) => ({
    ...place,
    path: findWritten(findPlaces(place.document), place.path).path,
  }))
  const isUnmoved = (path: JsonPointer) => findWritten(places, path).path === path
  // The target of an addition or a move is not there yet, or only as a default: its parent decides.
  const keptFixes = fixes?.filter(({ op, path, ...fix }) =>
    op === 'add' || op === 'move'
      ? isUnmoved(path.slice(0, path.lastIndexOf('/'))) && (!('from' in fix) || isUnmoved(fix.from))
      : isUnmoved(path),
  )
  return {
    ...rest,
    ...findWritten(places, finding.path),
    ...(related && { related }),
    ...(keptFixes && keptFixes.length > 0 && { cures: keptFixes }),
  } as unknown as Found
}
