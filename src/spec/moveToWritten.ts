import type { DocumentReference, FindingOf, JsonPointer } from '../base/index.js'
import { findWritten, type WrittenPlaces } from './findWritten.js'

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
  const keptFixes = fixes?.filter((fix) => isUnmoved(fix.path) && (fix.op !== 'move' || isUnmoved(fix.from)))
  return {
    ...rest,
    ...findWritten(places, finding.path),
    ...(related && { related }),
    ...(keptFixes && keptFixes.length > 0 && { cures: keptFixes }),
  } as unknown as Found
}
