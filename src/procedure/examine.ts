import { asText, type Finding, joinPointer } from '../base/index.js'
import type { ProcedureDocument, SpecSheet, Step } from '../spec/index.js'
import { findUndone } from './findUndone.js'
import { indexSheet } from './indexSheet.js'
import { judgeStep, nameOf } from './judgeStep.js'
import { listJobs } from './listJobs.js'
import { runStep } from './runStep.js'
import { startState } from './startState.js'
import type { MutableState } from './state.js'
import type { ProcedureContext, StepDraft } from './stepContext.js'

/** A finding, and where in the order of work it came up: what a cure is looked for from. */
export interface Trouble {
  readonly finding: Finding
  /** Place of the step, or the number of steps for what is still undone at the end. */
  readonly place: number
  readonly remedy: readonly StepDraft[]
}

/** Reads a procedure's context off its sheet, with the findings about the document as a whole. */
export function readContext(
  procedure: ProcedureDocument,
  sheet: SpecSheet,
): { readonly context: ProcedureContext; readonly findings: readonly Finding[] } {
  const document = { kind: 'procedure', id: procedure.id } as const
  const layout = indexSheet(sheet, procedure.identity)
  const { jobs, findings } = listJobs(
    sheet,
    layout,
    procedure.identity,
    procedure.services,
    document,
    procedure.only,
  )
  const { id, revision } = procedure.sheet
  const other: readonly Finding[] =
    id === sheet.id && revision === sheet.revision
      ? []
      : [
          {
            code: 'procedure/other-sheet',
            severity: id === sheet.id ? 'warning' : 'error',
            document,
            path: '/sheet',
            params: { named: id, namedRevision: revision, sheet: sheet.id, revision: sheet.revision },
          },
        ]
  return { context: { layout, jobs }, findings: [...other, ...findings] }
}

/** Runs the steps and tells every trouble, without looking for cures. */
export function examineSteps(
  sheet: SpecSheet,
  context: ProcedureContext,
  procedure: ProcedureDocument,
  watch?: (state: MutableState) => void,
): readonly Trouble[] {
  const document = { kind: 'procedure', id: procedure.id } as const
  const state = startState(context.layout)
  const troubles: Trouble[] = []
  const ids = new Set<string>()
  for (const [place, step] of procedure.steps.entries()) {
    const path = (...inside: readonly string[]) => joinPointer(['steps', place, ...inside])
    if (ids.has(step.id))
      troubles.push({
        finding: {
          code: 'procedure/duplicate-step-id',
          severity: 'error',
          document,
          path: path('id'),
          params: { step: asText(step.id) },
          cures: [{ op: 'replace', path: path('id'), value: numberId(step.id, procedure.steps) }],
        },
        place,
        remedy: [],
      })
    ids.add(step.id)
    const { faults, canRun } = judgeStep(sheet, context, step, place)
    for (const { at, ...fault } of faults)
      troubles.push({ finding: { ...fault, document, path: path(...at) }, place, remedy: [] })
    if (canRun)
      for (const failed of runStep(context, state, step))
        troubles.push({
          finding: {
            code: `procedure/${failed.name}`,
            severity: failed.severity,
            document,
            path: path(),
            ...(step.on === undefined
              ? {}
              : { related: [{ document: { kind: 'spec-sheet', id: sheet.id }, path: step.on }] }),
            params: { step: asText(step.id), ...nameStepPart(context, step) },
          },
          place,
          remedy: failed.remedy,
        })
    watch?.(state)
  }
  for (const { remedy, ...undone } of findUndone(context, state))
    troubles.push({ finding: { ...undone, document, path: '/steps' }, place: procedure.steps.length, remedy })
  return troubles
}

function nameStepPart(context: ProcedureContext, step: Step) {
  const part = step.on === undefined ? undefined : context.layout.parts.get(step.on)
  const instance = step.at?.instance
  const instances = part !== undefined && 'gearcase' in part ? part.gearcase.gearcase.instances : undefined
  return {
    ...nameOf(part),
    ...(instance === undefined ? {} : { instance: instances?.[instance]?.name ?? instance }),
  }
}

function numberId(id: string, steps: readonly Step[]): string {
  const used = new Set(steps.map((step) => step.id))
  let count = 2
  while (used.has(`${asText(id).slice(0, 58)}-${count}`)) count += 1
  return `${asText(id).slice(0, 58)}-${count}`
}
