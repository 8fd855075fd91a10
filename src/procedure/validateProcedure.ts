import type { Finding } from '../base/index.js'
import { type ProcedureDocument, requireDocument, type SpecSheet } from '../spec/index.js'
import { checkSteps } from './checkSteps.js'
import type { ProcedureCodes } from './codes.js'
import { readContext } from './readContext.js'

/** Steps run in search of cures: enough for every place in a list of a few hundred steps. */
const MAX_STEPS_RUN = 150_000

/**
 * Checks a writer's order of work against its sheet, so that no machine is stranded, no hand hurt and no plug left open.
 * To write a new one use {@link buildProcedure}; to apply the cures use {@link repairProcedure}.
 *
 * Equation: the steps are run in order; every need of an action that does not hold when its turn comes is a finding,
 * and so is everything that the services ask for and the last step leaves undone. A need is reported once.
 * @param procedure The steps.
 * @param sheet The sheet that they point into.
 * @returns All findings, in the order of the steps. Those that one change to `/steps` would correct carry it as a cure.
 * All findings are reported whatever the length; the search for cures ends after a bounded effort, the same every time.
 * @throws TypeError where the arguments are no parsed procedure and sheet.
 *
 * Source: common practice, no source, as the table {@link ACTIONS} lists it; work under a machine held by a jack alone
 * is forbidden by WAC 296-307-22509.
 * @example
 * import { validateProcedure } from 'drivetrain-service/v1/procedure'
 * const supports = { beam: { at: 'front beam' } }
 * const machine = { make: 'Invented', model: 'Example', type: 'carrier', variants: {}, axles: {}, supports }
 * const sheet = { kind: 'spec-sheet', version: '1.0', id: 'example', revision: '1', machine, sources: {}, gearcases: {}, services: {} } as const
 * const steps = [{ id: 'stands', do: 'set on stands', on: '/machine/supports/beam' }] as const
 * const procedure = { kind: 'procedure', version: '1.0', id: 'p', name: 'P', sheet: { id: 'example', revision: '1' }, identity: {}, services: [], steps } as const
 * // What is wrong with stands under a machine that was not raised?
 * validateProcedure(procedure, sheet)[0]?.code // => 'procedure/not-raised'
 */
export function validateProcedure(
  procedure: ProcedureDocument,
  sheet: SpecSheet,
): readonly Finding<ProcedureCodes>[] {
  requireDocument('procedure', procedure, 'procedure')
  requireDocument('sheet', sheet, 'spec-sheet')
  const { context, findings } = readContext(procedure, sheet)
  const counter = { sheet, context, known: new Map(), effort: { left: MAX_STEPS_RUN } }
  return [...findings, ...checkSteps(counter, procedure)]
}
