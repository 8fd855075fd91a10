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
  const place = findDeepest(places, full, (candidate) => candidate.full)
  if (place === undefined) return { path: full }
  const relativePointer = full.slice(place.full.length)
  if (place.moved === true) return { path: place.path + relativePointer }
  const part = findDeepest(place.parts ?? [], relativePointer, (candidate) => candidate.path)
  return part === undefined ? { path: place.path } : { path: place.path, range: [part.from, part.to] }
}

/** The entry whose pointer is nearest, at or above `path`; of two equal ones, the later. */
function findDeepest<Entry>(
  entries: readonly Entry[],
  path: JsonPointer,
  getPointer: (entry: Entry) => JsonPointer,
): Entry | undefined {
  let found: Entry | undefined
  for (const entry of entries) {
    const place = getPointer(entry)
    const isAtOrAbove = path === place || path.startsWith(`${place}/`)
    if (isAtOrAbove && (found === undefined || place.length >= getPointer(found).length)) found = entry
  }
  return found
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
