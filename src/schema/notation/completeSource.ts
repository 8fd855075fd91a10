import type { SourceRef } from '../../spec/index.js'
import type { WrittenSource } from './piece.js'
import { asHolder, type Holder } from './placeTable.js'

/** The source that a text names, with the id of its section's source, or of the only source of the sheet, if it names none. */
export function completeSource(
  { ref, ...rest }: WrittenSource,
  section: Partial<SourceRef> | undefined,
  sheet: Holder,
): Partial<SourceRef> {
  const ids = Object.keys(asHolder(sheet['sources']) ?? {})
  const whole = ref ?? section?.ref ?? (ids.length === 1 ? ids[0] : undefined)
  return { ...(whole !== undefined && { ref: whole }), ...rest }
}
