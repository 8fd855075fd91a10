import type { Finding } from '../base/index.js'
import type { ProcedureDocument, SpecSheet } from '../spec/index.js'
import { type ProcedureCodes, procedureFinding } from './codes.js'
import { indexSheet } from './indexSheet.js'
import { listJobs, mustNotRun } from './listJobs.js'
import type { ProcedureContext } from './stepContext.js'

/** The machine and the jobs of a procedure, with findings about the whole document. */
export function readContext(
  procedure: ProcedureDocument,
  sheet: SpecSheet,
): { readonly context: ProcedureContext; readonly findings: readonly Finding<ProcedureCodes>[] } {
  const indexedSheet = indexSheet(sheet, procedure.identity)
  const { jobs, findings } = listJobs(sheet, indexedSheet, procedure)
  const { id, revision } = procedure.sheet
  const context = { indexedSheet, jobs, mustNotRun: mustNotRun(procedure.events) }
  if (id === sheet.id && revision === sheet.revision) return { context, findings }
  const otherSheetFinding = procedureFinding(
    'procedure/other-sheet',
    id === sheet.id ? 'warning' : 'error',
    { kind: 'procedure', id: procedure.id },
    '/sheet',
    { named: id, namedRevision: revision, sheet: sheet.id, revision: sheet.revision },
  )
  return { context, findings: [otherSheetFinding, ...findings] }
}
