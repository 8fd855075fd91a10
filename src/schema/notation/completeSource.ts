import type { SourceRef } from '../../spec/index.js'
import type { WrittenSource } from './piece.js'
import { asHolder, type Holder } from './placeTable.js'

/**
 * The source named in a text. A missing id is taken from the section's source, or from the sheet's only
 * source.
 */
export function completeSource(
  written: WrittenSource,
  section: Partial<SourceRef> | undefined,
  document: Holder,
): Partial<SourceRef> {
  if (written.ref !== undefined) return written
  const ref = section?.ref ?? findOnlySource(document)
  return ref === undefined ? written : { ref, ...written }
}

function findOnlySource({ sources }: Holder): string | undefined {
  const ids = Object.keys(asHolder(sources) ?? {})
  return ids.length === 1 ? ids[0] : undefined
}
