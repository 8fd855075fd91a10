import { type Id, type MachineLog, resolveVariant, type SpecSheet } from '../spec/index.js'
import type { PlannedMachine } from './visitPlan.js'

/** Who the machine is: names from its log and sheet, and exactly which variant, or that it cannot be told. */
export function describeMachine(sheet: SpecSheet, log: MachineLog): PlannedMachine {
  const { make, model, type, variants } = sheet.machine
  const verdict = resolveVariant(sheet, log.identity)
  const named = (id: Id) => ({ id, name: variants[id]?.name ?? id })
  return {
    log: log.id,
    name: log.name,
    make,
    model,
    type,
    sheet: { id: sheet.id, revision: sheet.revision },
    ...(sheet.header === undefined ? {} : { header: sheet.header }),
    identity: log.identity,
    variant:
      verdict.kind === 'selected'
        ? { kind: 'one', ...named(verdict.variant), reasons: verdict.reasons }
        : {
            kind: 'cannot tell',
            missing: verdict.kind === 'cannot tell' ? verdict.missing : [],
            candidates: verdict.candidates.map(named),
            reasons: verdict.reasons,
          },
  }
}
