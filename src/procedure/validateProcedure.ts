import type { Finding } from '../base/index.js'
import { type ProcedureDocument, requireDocument, type SpecSheet } from '../spec/index.js'
import { checkSteps } from './checkSteps.js'
import type { ProcedureCodes } from './codes.js'
import { readContext } from './readContext.js'

/** The maximum number of steps that are run in the search for fixes; enough for a few hundred steps. */
const MAX_STEPS_RUN = 150_000

/**
 * Checks a procedure against its sheet for steps that could hurt someone, strand the machine or leave a plug
 * open. To write a new procedure, use {@link buildProcedure}; to apply the fixes, use {@link
 * repairProcedure}.
 *
 * Method: runs the steps in order. It reports every unmet need of an action once, and the required work that
 * is not done after the last step.
 * @param procedure The procedure to check.
 * @param sheet The sheet of the procedure.
 * @returns All findings, in the order of the steps. A finding that one change to `/steps` would correct has
 * that change as a fix. The search for fixes has a fixed limit: with more than four findings it looks only
 * around the step.
 * @throws TypeError if an argument is not a parsed procedure or sheet.
 *
 * Source: common practice, no source, as listed in {@link ACTIONS}. WAC 296-307-22509 forbids work under a machine that
 * only a jack holds.
 * @example
 * import { validateProcedure } from 'drivetrain-service/v1/procedure'
 * const supports = { beam: { at: 'front beam' } }
 * const machine = { make: 'Invented', model: 'Example', type: 'carrier', variants: {}, axles: {}, supports }
 * const sheet = { kind: 'spec-sheet', version: '1.0', id: 'example', revision: '1', machine, sources: {}, gearcases: {}, services: {} } as const
 * const steps = [{ id: 'stands', do: 'set on stands', on: '/machine/supports/beam' }] as const
 * const procedure = { kind: 'procedure', version: '1.0', id: 'p', name: 'P', sheet: { id: 'example', revision: '1' }, identity: {}, services: [], steps } as const
 * // What is found if stands are set under a machine that was not raised?
 * validateProcedure(procedure, sheet)[0]?.code // => 'procedure/machine-not-raised'
 */
export function validateProcedure(
  procedure: ProcedureDocument,
  sheet: SpecSheet,
): readonly Finding<ProcedureCodes>[] {
  requireDocument('procedure', procedure, 'procedure')
  requireDocument('sheet', sheet, 'spec-sheet')
  const { context, findings } = readContext(procedure, sheet)
  const counter = { sheet, context, stepChecks: new Map(), budget: { left: MAX_STEPS_RUN } }
  return [...findings, ...checkSteps(counter, procedure)]
}
