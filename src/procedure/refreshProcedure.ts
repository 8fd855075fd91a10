import { type Finding, isSameJson } from '../base/index.js'
import type { Id, Identity, ProcedureDocument, SpecSheet, Step } from '../spec/index.js'
import { makeStepId } from './build/writer.js'
import type { ProcedureCodes } from './codes.js'
import { diffSteps } from './diffSteps.js'
import { fillReferences } from './fillReferences.js'
import { findTroubles } from './findTroubles.js'
import { readContext } from './readContext.js'
import { buildSameWork } from './rebuildSteps.js'
import { type Repair, repairProcedure } from './repairProcedure.js'
import { type TroubleCounter, traceSteps } from './runStep.js'
import { validateProcedure } from './validateProcedure.js'

interface RefreshedProcedure {
  readonly procedure: ProcedureDocument
  /** Steps that were removed: the sheet no longer has their part or instance. */
  readonly removedSteps: readonly Step[]
  /** Ids of the moved steps. */
  readonly moved: readonly Id[]
  /** Notes without a step in the new procedure, with the old step id. */
  readonly lostNotes: readonly { readonly id: Id; readonly note: string }[]
  readonly left: readonly Finding<ProcedureCodes>[]
  /** Whether the steps are in the built order, since smaller changes did not help. */
  readonly isRebuilt: boolean
}

const MISSING_PART_CODES: readonly (keyof ProcedureCodes)[] = [
  'procedure/unknown-part',
  'procedure/wrong-part',
  'procedure/unknown-instance',
  'procedure/part-not-on-this-machine',
]

/**
 * Adapts a writer's procedure to another revision of its sheet, or to another machine. The writer's order,
 * name, ids and notes stay; only mistakes are corrected. For the same revision and machine it returns the
 * same procedure.
 */
export function refreshProcedure(
  old: ProcedureDocument,
  sheet: SpecSheet,
  identity: Identity,
): RefreshedProcedure {
  const { id, revision } = sheet
  if (isSameJson([old.sheet, old.identity], [{ id, revision }, identity]))
    return {
      procedure: old,
      removedSteps: [],
      moved: [],
      lostNotes: [],
      left: validateProcedure(old, sheet),
      isRebuilt: false,
    }
  const adaptedProcedure = { ...old, sheet: { id, revision }, identity }
  const { context } = readContext(adaptedProcedure, sheet)
  const { troubles } = findTroubles(sheet, context, adaptedProcedure)
  const removedPlaces = new Set(
    troubles.flatMap(({ finding, place }) => (MISSING_PART_CODES.includes(finding.code) ? place : [])),
  )
  const steps = adaptedProcedure.steps.filter((_step, place) => !removedPlaces.has(place))
  const { procedure, left, stopped } = repairInOrder({ ...adaptedProcedure, steps }, sheet)
  return {
    procedure,
    removedSteps: adaptedProcedure.steps.filter((_step, place) => removedPlaces.has(place)),
    moved: listMovedSteps(old.steps, procedure.steps),
    lostNotes: listLostNotes(old.steps, procedure.steps),
    left,
    isRebuilt: stopped === 'rebuilt',
  }
}

/** Repairs in the writer's order: if single changes are not enough, inserts missing steps first. */
function repairInOrder(procedure: ProcedureDocument, sheet: SpecSheet): Repair {
  const firstRepair = repairProcedure(procedure, sheet)
  const builtSteps = firstRepair.stopped === 'done' ? undefined : buildSameWork(sheet, procedure)
  if (builtSteps === undefined) return firstRepair
  const { context } = readContext(procedure, sheet)
  const counter = { sheet, context, stepChecks: new Map(), budget: { left: Number.POSITIVE_INFINITY } }
  const { steps } = fillReferences(sheet, context, procedure).procedure
  const orderedRepair = repairProcedure(
    { ...procedure, steps: insertMissingSteps(counter, steps, builtSteps) },
    sheet,
  )
  return orderedRepair.left.length <= firstRepair.left.length ? orderedRepair : firstRepair
}

/** Ids of the steps that are in both lists but have moved. */
function listMovedSteps(oldSteps: readonly Step[], newSteps: readonly Step[]): readonly Id[] {
  const oldIds = oldSteps.map(({ id }) => id)
  return diffSteps(oldSteps, newSteps).flatMap((change) => {
    const added = change.op === 'add' ? newSteps[Number(change.path.slice('/steps/'.length))] : undefined
    return added !== undefined && oldIds.includes(added.id) ? added.id : []
  })
}

function listLostNotes(
  oldSteps: readonly Step[],
  newSteps: readonly Step[],
): RefreshedProcedure['lostNotes'] {
  return oldSteps.flatMap(({ id, note }) =>
    note === undefined || newSteps.some((step) => step.note?.includes(note)) ? [] : [{ id, note }],
  )
}

/**
 * Inserts missing built steps into the writer's steps, each after the step that it follows in the built
 * order. Built steps that correct nothing are left out.
 */
function insertMissingSteps(
  counter: TroubleCounter,
  ownSteps: readonly Step[],
  builtSteps: readonly Step[],
): readonly Step[] {
  const ownKeys = listStepKeys(ownSteps)
  const builtKeys = listStepKeys(builtSteps)
  const usedIds = new Set(ownSteps.map(({ id }) => id))
  const insertedSteps: Step[] = []
  let steps = [...ownSteps]
  let previousStep: Step | undefined
  for (const [place, step] of builtSteps.entries()) {
    const ownPlace = ownKeys.indexOf(builtKeys[place] ?? '')
    if (ownPlace === -1) {
      const added = usedIds.has(step.id) ? { ...step, id: makeStepId(step, usedIds) } : step
      usedIds.add(added.id)
      insertedSteps.push(added)
      steps.splice(previousStep === undefined ? 0 : steps.indexOf(previousStep) + 1, 0, added)
      previousStep = added
    } else previousStep = ownSteps[ownPlace]
  }
  let troubles = traceSteps(counter, steps).total
  for (const step of insertedSteps) {
    const withoutStep = steps.filter((candidate) => candidate !== step)
    const { total } = traceSteps(counter, withoutStep)
    if (total > troubles) continue
    steps = withoutStep
    troubles = total
  }
  return steps
}

/** A key for each step: action, part, instance, and a number for repeated steps. */
function listStepKeys(steps: readonly Step[]): readonly string[] {
  const counts = new Map<string, number>()
  return steps.map(({ do: action, on, at }) => {
    const key = JSON.stringify([action, on, at?.instance])
    const count = (counts.get(key) ?? 0) + 1
    counts.set(key, count)
    return `${key} ${count}`
  })
}
