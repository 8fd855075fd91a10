import { asText, type DocumentReference, dropUndefined, joinPointer } from '../base/index.js'
import type { ProcedureDocument, SpecSheet, Step } from '../spec/index.js'
import { checkStep } from './checkStep.js'
import { type AtPart, procedureFinding } from './codes.js'
import { findUndone, type UndoneWork } from './findUndone.js'
import { readInstanceName, readPartNames } from './layout.js'
import { chooseSeverity } from './needs.js'
import { runStep, type TroubleCounter } from './runStep.js'
import { makeInitialState, type ProcedureState } from './state.js'
import type { ProcedureContext } from './stepContext.js'

/** A finding about the steps, with the index of the step where the search for a fix starts. */
export interface Trouble extends UndoneWork {
  /** Index of the step; for work that is not done at the end, the number of steps. */
  readonly place: number
}

/**
 * Runs the steps and reports every trouble, without fixes. `onStep` gets the state after each step; steps
 * without mistakes are not checked again.
 */
export function findTroubles(
  sheet: SpecSheet,
  context: ProcedureContext,
  procedure: ProcedureDocument,
  onStep?: (state: ProcedureState) => void,
  stepChecks?: TroubleCounter['stepChecks'],
): { readonly troubles: readonly Trouble[]; readonly end: ProcedureState } {
  const document = { kind: 'procedure', id: procedure.id } as const
  const sheetDocument = { kind: 'spec-sheet', id: sheet.id } as const
  const state = makeInitialState(context.indexedSheet)
  const troubles: Trouble[] = []
  const ids = new Set<string>()
  for (const [place, step] of procedure.steps.entries()) {
    if (ids.has(step.id))
      troubles.push({ finding: reportDuplicate(procedure, place, step, document), place, remedy: [] })
    ids.add(step.id)
    const isKnownCorrect = stepChecks?.get(step)?.mistakes === 0
    const { findings, canRun } = isKnownCorrect
      ? { findings: [], canRun: true }
      : checkStep(sheet, context, { step, place, document })
    troubles.push(...findings.map((finding) => ({ finding, place, remedy: [] })))
    for (const { name, remedy } of canRun ? runStep(context, state, step) : []) {
      const path = joinPointer(['steps', place])
      const params = readStepNames(context, step)
      const related = step.on === undefined ? {} : { related: [{ document: sheetDocument, path: step.on }] }
      const severity = chooseSeverity(name)
      const finding = procedureFinding(`procedure/${name}`, severity, document, path, params, related)
      troubles.push({ finding, place, remedy })
    }
    onStep?.(state)
  }
  for (const undone of findUndone(context, state, document))
    troubles.push({ ...undone, place: procedure.steps.length })
  return { troubles, end: state }
}

/** The names of the step and its part, as params. */
function readStepNames({ indexedSheet }: ProcedureContext, { id, on, at }: Step): AtPart {
  const part = on === undefined ? undefined : indexedSheet.parts.get(on)
  const instance = at?.instance
  const instanceNames =
    part !== undefined && 'gearcase' in part
      ? readInstanceName(part.gearcase, instance)
      : dropUndefined({ instance })
  return { step: asText(id), ...readPartNames(part), ...instanceNames }
}

function reportDuplicate(
  { steps }: ProcedureDocument,
  place: number,
  { id }: Step,
  document: DocumentReference,
): Trouble['finding'] {
  const used = new Set(steps.map((step) => step.id))
  const baseId = asText(id).slice(0, 58)
  let count = 2
  while (used.has(`${baseId}-${count}`)) count += 1
  const path = joinPointer(['steps', place, 'id'])
  const fixes = [{ op: 'replace', path, value: `${baseId}-${count}` } as const]
  const params = { step: asText(id) }
  return procedureFinding('procedure/duplicate-step-id', 'error', document, path, params, { cures: fixes })
}
