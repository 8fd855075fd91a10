import type { Finding } from '../base/index.js'
import { type MeterCodes, readMeters } from '../interval/index.js'
import { type ProcedureCodes, validateProcedure } from '../procedure/index.js'
import type { Subject } from './setSubjects.js'

/**
 * What other rooms find in a document: in a procedure whose sheet is in the set, and in the meters of a log. The codes
 * are theirs, so that `checkDocuments` and `validateProcedure` say the same of a procedure.
 */
export function roomFindings({
  input: { document, sheet },
  inside,
}: Subject): readonly Finding<MeterCodes & ProcedureCodes>[] {
  const found = (): readonly Finding<MeterCodes & ProcedureCodes>[] => {
    if (document.kind === 'machine-log') return readMeters(document).findings
    if (document.kind !== 'procedure' || sheet === undefined) return []
    return validateProcedure(document, sheet.document)
  }
  const { name } = inside
  const reference = { kind: document.kind, id: document.id, ...(name === undefined ? {} : { name }) }
  return found().map((finding) => ({ ...finding, document: reference }))
}
