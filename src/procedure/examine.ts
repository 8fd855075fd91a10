import { asText, type Finding, joinPointer } from '../base/index.js'
import type { ProcedureDocument, SpecSheet, Step } from '../spec/index.js'
import { findUndone } from './findUndone.js'
import { listJobs } from './jobs.js'
import { judgeStep, nameOf } from './judgeStep.js'
import { layOutSheet } from './layOutSheet.js'
import { runStep } from './runStep.js'
import type { StepSeed, World } from './site.js'
import { startState } from './startState.js'
import type { Draft } from './state.js'

/** A finding, and where in the order of work it came up: what a cure is looked for from. */
export interface Trouble {
  readonly finding: Finding
  /** Place of the step, or the number of steps for what is still undone at the end. */
  readonly place: number
  readonly mend: readonly StepSeed[]
}

/** Reads a procedure's world off its sheet, with the findings about the document as a whole. */
export function readWorld(
  procedure: ProcedureDocument,
  sheet: SpecSheet,
): { readonly world: World; readonly findings: readonly Finding[] } {
  const document = { kind: 'procedure', id: procedure.id } as const
  const layout = layOutSheet(sheet, procedure.identity)
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
  return { world: { layout, jobs }, findings: [...other, ...findings] }
}

/** Runs the steps and tells every trouble, without looking for cures. */
export function examineSteps(
  sheet: SpecSheet,
  world: World,
  procedure: ProcedureDocument,
  watch?: (state: Draft) => void,
): readonly Trouble[] {
  const document = { kind: 'procedure', id: procedure.id } as const
  const state = startState(world.layout)
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
        mend: [],
      })
    ids.add(step.id)
    const { faults, canRun } = judgeStep(sheet, world, step, place)
    for (const { at, ...fault } of faults)
      troubles.push({ finding: { ...fault, document, path: path(...at) }, place, mend: [] })
    if (canRun)
      for (const failed of runStep(world, state, step))
        troubles.push({
          finding: {
            code: `procedure/${failed.name}`,
            severity: failed.severity,
            document,
            path: path(),
            ...(step.on === undefined
              ? {}
              : { related: [{ document: { kind: 'spec-sheet', id: sheet.id }, path: step.on }] }),
            params: { step: asText(step.id), ...nameStepPart(world, step) },
          },
          place,
          mend: failed.mend,
        })
    watch?.(state)
  }
  for (const { mend, ...undone } of findUndone(world, state))
    troubles.push({ finding: { ...undone, document, path: '/steps' }, place: procedure.steps.length, mend })
  return troubles
}

function nameStepPart(world: World, step: Step) {
  const part = step.on === undefined ? undefined : world.layout.parts.get(step.on)
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
