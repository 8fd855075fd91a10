import { asText, type DocumentReference, joinPointer } from '../base/index.js'
import type { ProcedureDocument, SpecSheet, Step } from '../spec/index.js'
import { checkStep } from './checkStep.js'
import { procedureFinding } from './codes.js'
import { findUndone, type Undone } from './findUndone.js'
import { namePart } from './layout.js'
import { severityOf } from './needs.js'
import { runStep } from './runStep.js'
import { type MutableState, type ProcedureState, startState } from './state.js'
import type { ProcedureContext } from './stepContext.js'

/** A finding about the steps, and where in the order of work it came up: what a cure is looked for from. */
export interface Trouble extends Undone {
  /** Place of the step, or the number of steps for what is still undone at the end. */
  readonly place: number
}

/** Runs the steps and reports every trouble, without looking for cures; `watch` sees the state after each step. */
export function findTroubles(
  sheet: SpecSheet,
  context: ProcedureContext,
  procedure: ProcedureDocument,
  watch?: (state: ProcedureState) => void,
): { readonly troubles: readonly Trouble[]; readonly end: ProcedureState } {
  const document = { kind: 'procedure', id: procedure.id } as const
  const state = startState(context.layout)
  const troubles: Trouble[] = []
  const ids = new Set<string>()
  for (const [place, step] of procedure.steps.entries()) {
    if (ids.has(step.id))
      troubles.push({ finding: reportDuplicate(procedure, place, step, document), place, remedy: [] })
    ids.add(step.id)
    const { findings, canRun } = checkStep(sheet, context, step, place, document)
    troubles.push(...findings.map((finding) => ({ finding, place, remedy: [] })))
    if (canRun) troubles.push(...runAndReport(sheet, context, state, step, place, document))
    watch?.(state)
  }
  for (const undone of findUndone(context, state, document))
    troubles.push({ ...undone, place: procedure.steps.length })
  return { troubles, end: state }
}

function runAndReport(
  sheet: SpecSheet,
  context: ProcedureContext,
  state: MutableState,
  step: Step,
  place: number,
  document: DocumentReference,
): readonly Trouble[] {
  const part = step.on === undefined ? undefined : context.layout.parts.get(step.on)
  const instance = step.at?.instance
  const instances = part !== undefined && 'gearcase' in part ? part.gearcase.gearcase.instances : undefined
  return runStep(context, state, step).map(({ name, remedy }) => ({
    finding: procedureFinding(
      `procedure/${name}`,
      severityOf(name),
      document,
      joinPointer(['steps', place]),
      {
        step: asText(step.id),
        ...namePart(part),
        ...(instance === undefined ? {} : { instance: instances?.[instance]?.name ?? instance }),
      },
      step.on === undefined
        ? {}
        : { related: [{ document: { kind: 'spec-sheet', id: sheet.id }, path: step.on }] },
    ),
    place,
    remedy,
  }))
}

function reportDuplicate(
  { steps }: ProcedureDocument,
  place: number,
  { id }: Step,
  document: DocumentReference,
): Trouble['finding'] {
  const used = new Set(steps.map((step) => step.id))
  const stem = asText(id).slice(0, 58)
  let count = 2
  while (used.has(`${stem}-${count}`)) count += 1
  const path = joinPointer(['steps', place, 'id'])
  return procedureFinding(
    'procedure/duplicate-step-id',
    'error',
    document,
    path,
    { step: asText(id) },
    { cures: [{ op: 'replace', path, value: `${stem}-${count}` }] },
  )
}
