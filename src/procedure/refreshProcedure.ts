import { type Finding, isSameJson } from '../base/index.js'
import type { Id, Identity, ProcedureDocument, SpecSheet, Step } from '../spec/index.js'
import { buildSameWork } from './buildSameWork.js'
import type { ProcedureCodes } from './codes.js'
import { diffSteps } from './diffSteps.js'
import { fillReferences } from './fillReferences.js'
import { findTroubles } from './findTroubles.js'
import { insertMissingSteps } from './insertMissingSteps.js'
import { readContext } from './readContext.js'
import { type Repair, repairProcedure } from './repairProcedure.js'
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
  const adapted = { ...old, sheet: { id, revision }, identity }
  const { context } = readContext(adapted, sheet)
  const { troubles } = findTroubles(sheet, context, adapted)
  const removedPlaces = new Set(
    troubles.flatMap(({ finding, place }) => (MISSING_PART_CODES.includes(finding.code) ? place : [])),
  )
  const steps = adapted.steps.filter((_step, place) => !removedPlaces.has(place))
  const { procedure, left, stopped } = repairInOrder({ ...adapted, steps }, sheet)
  return {
    procedure,
    removedSteps: adapted.steps.filter((_step, place) => removedPlaces.has(place)),
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
