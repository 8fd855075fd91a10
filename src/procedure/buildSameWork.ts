import type { ProcedureDocument, SpecSheet, Step } from '../spec/index.js'
import { buildProcedure } from './buildProcedure.js'

/** The built steps for the work of a procedure, on ramps if it uses them; undefined if no procedure can be built. */
export function buildSameWork(
  sheet: SpecSheet,
  { id, name, identity, services, only, events, steps }: ProcedureDocument,
): readonly Step[] | undefined {
  if (services.length === 0) return undefined
  const raiseOn = steps.some((step) => step.do === 'drive onto ramps') ? 'ramps' : 'stands'
  const facts = {
    sheet,
    identity,
    services,
    ...(only && { only }),
    ...(events && { events }),
    raiseOn,
  } as const
  const built = buildProcedure(facts, { id, name })
  return built.ok && built.value.steps.length > 0 ? built.value.steps : undefined
}
