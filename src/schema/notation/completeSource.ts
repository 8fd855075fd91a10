import type { SourceRef } from '../../spec/index.js'
import type { WrittenSource } from './piece.js'
import { asHolder, type Holder } from './placeTable.js'

/** The source that a text names, with the id of its section's source, or of the only source of the sheet, if it names none. */
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
