import type { Finding } from '../base/index.js'
import { type ProcedureDocument, requireDocument, type SpecSheet } from '../spec/index.js'
import { examineSteps, readContext } from './examine.js'
import { startState } from './startState.js'
import type { MutableState, ProcedureState } from './state.js'

export interface Simulation {
  /** The machine as it comes in. */
  readonly start: ProcedureState
  /** The state after each step, in order; a step that says too little to be done leaves it as it was. */
  readonly states: readonly ProcedureState[]
  readonly end: ProcedureState
  /** What is wrong, without cures: {@link validateProcedure} looks for those. */
  readonly findings: readonly Finding[]
}

/**
 * Runs a procedure step by step on paper, for one who wants to see what stands open when.
 * To get findings with cures use {@link validateProcedure}.
 *
 * Equation: state after = the action's changes on the state before; a need that fails is told and then taken as held.
 * @param procedure The steps.
 * @param sheet The sheet that they point into.
 * @returns The state after each step, and the findings.
 * @throws TypeError where the arguments are no parsed procedure and sheet.
 *
 * Source: house rule: one table of actions drives building and checking alike.
 * @example
 * import { simulateProcedure } from 'drivetrain-service/v1/procedure'
 * const machine = { make: 'Invented', model: 'Example', type: 'carrier', variants: {}, axles: {}, supports: {} }
 * const sheet = { kind: 'spec-sheet', version: '1.0', id: 'example', revision: '1', machine, sources: {}, gearcases: {}, services: {} }
 * const steps = [{ id: 'stop', do: 'stop the engine' }]
 * const procedure = { kind: 'procedure', version: '1.0', id: 'p', name: 'P', sheet: { id: 'example', revision: '1' }, identity: {}, services: [], steps }
 * // How does the engine stand after the step that stops it?
 * simulateProcedure(procedure, sheet).end.engine // => 'stopped'
 */
export function simulateProcedure(procedure: ProcedureDocument, sheet: SpecSheet): Simulation {
  requireDocument('procedure', procedure, 'procedure')
  requireDocument('sheet', sheet, 'spec-sheet')
  const { context, findings } = readContext(procedure, sheet)
  const start = startState(context.layout)
  const states: ProcedureState[] = []
  const troubles = examineSteps(sheet, context, procedure, (state) => states.push(copyState(state)))
  return {
    start,
    states,
    end: states.at(-1) ?? start,
    findings: [...findings, ...troubles.map((trouble) => trouble.finding)],
  }
}

function copyState(state: MutableState): ProcedureState {
  return structuredClone(state)
}
