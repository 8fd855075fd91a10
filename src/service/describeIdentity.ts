import { dropUndefined } from '../base/index.js'
import { type Id, type Identity, resolveVariant, type SpecSheet } from '../spec/index.js'
import type { PlannedMachine } from './visitPlan.js'

/** The names of a machine from its sheet, and its variant, if it is known. */
export function describeIdentity(sheet: SpecSheet, identity: Identity): Omit<PlannedMachine, 'log' | 'name'> {
  const { make, model, type, variants } = sheet.machine
  const resolved = resolveVariant(sheet, identity)
  const describeVariant = (variant: Id) => ({ id: variant, name: variants[variant]?.name ?? variant })
  const { reasons } = resolved
  const variant: PlannedMachine['variant'] =
    resolved.verdict === 'selected'
      ? { verdict: 'one', ...describeVariant(resolved.variant), reasons }
      : {
          verdict: 'cannot tell',
          missing: resolved.verdict === 'cannot tell' ? resolved.missing : [],
          candidates: resolved.candidates.map(describeVariant),
          reasons,
        }
  const reference = { id: sheet.id, revision: sheet.revision }
  return dropUndefined({ make, model, type, sheet: reference, header: sheet.header, identity, variant })
}
