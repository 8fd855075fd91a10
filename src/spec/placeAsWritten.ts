import type { DocumentReference, FindingOf, JsonPointer } from '../base/index.js'
import { findWritten, type WrittenPlaces } from './findWritten.js'

/** A finding on the full form of a sheet, moved to what its writer wrote. A cure that has no place there is dropped. */
export function placeAsWritten<Found extends FindingOf<string, unknown>>(
  finding: Found,
  placesOf: (document: DocumentReference) => WrittenPlaces,
): Found {
  const places = placesOf(finding.document)
  const { related: others, cures, ...rest } = finding
  const related = others?.map((place) => ({
    ...place,
    path: findWritten(placesOf(place.document), place.path).path,
  }))
  const isSame = (path: JsonPointer) => findWritten(places, path).path === path
  const left = cures?.filter((cure) => isSame(cure.path) && (cure.op !== 'move' || isSame(cure.from)))
  return {
    ...rest,
    ...findWritten(places, finding.path),
    ...(related && { related }),
    ...(left && left.length > 0 && { cures: left }),
  } as unknown as Found
}
