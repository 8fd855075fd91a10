import { findTroubles } from '../../src/procedure/findTroubles.js'
import { readContext } from '../../src/procedure/readContext.js'
import { makeInitialState, type ProcedureState } from '../../src/procedure/state.js'
import type { ProcedureDocument, SpecSheet } from '../../src/v1/spec.js'

/** Runs a procedure on paper: the state before, after each step and at the end, and the findings without fixes. */
export function simulateProcedure(procedure: ProcedureDocument, sheet: SpecSheet) {
  const { context, findings } = readContext(procedure, sheet)
  const states: ProcedureState[] = []
  const { troubles, end } = findTroubles(sheet, context, procedure, (state) =>
    states.push(structuredClone(state)),
  )
  const all = [...findings, ...troubles.map(({ finding }) => finding)]
  return { start: makeInitialState(context.indexedSheet), states, end, findings: all }
}
