import type { DocumentReference, FindingOf, JsonPointer } from '../base/index.js'
import { findWritten, type WrittenPlaces } from './findWritten.js'

/**
 * Moves a finding from the full form of a document to the document as written. Cures that cannot be moved are
 * dropped.
 */
export function moveToWritten<Found extends FindingOf<string, unknown>>(
  finding: Found,
  findPlaces: (document: DocumentReference) => WrittenPlaces,
): Found {
  const places = findPlaces(finding.document)
  const { related: others, cures, ...rest } = finding
  const related = others?.map((place) => ({
    ...place,
    path: findWritten(findPlaces(place.document), place.path).path,
  }))
  const isUnmoved = (path: JsonPointer) => findWritten(places, path).path === path
  const keptCures = cures?.filter(
    (cure) => isUnmoved(cure.path) && (cure.op !== 'move' || isUnmoved(cure.from)),
  )
  return {
    ...rest,
    ...findWritten(places, finding.path),
    ...(related && { related }),
    ...(keptCures && keptCures.length > 0 && { cures: keptCures }),
  } as unknown as Found
}
