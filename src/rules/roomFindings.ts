import type { Finding } from '../base/index.js'
import { readMeters } from '../interval/index.js'
import { validateProcedure } from '../procedure/index.js'
import { findSheet } from './partners.js'
import type { DocumentSet } from './rule.js'
import type { Subject } from './runRules.js'

/**
 * What the calculation rooms themselves find in a document: the must-hold list of the procedure room for a
 * procedure whose sheet is in the set, and the meters of a log. Their findings keep their own codes, so that
 * `check` says of a procedure exactly what `validateProcedure` says, and nothing is written twice.
 */
export function roomFindings({ named }: Subject, set: DocumentSet): readonly Finding[] {
  const { document, name } = named
  const found = (): readonly Finding[] => {
    if (document.kind === 'machine-log') return readMeters(document).findings
    if (document.kind !== 'procedure') return []
    const sheet = findSheet(set, document.sheet)?.document
    return sheet === undefined ? [] : validateProcedure(document, sheet)
  }
  const reference = { kind: document.kind, id: document.id, ...(name === undefined ? {} : { name }) }
  return found().map((finding) => ({ ...finding, document: reference }))
}
