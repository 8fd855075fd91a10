import type { DocumentReference, Finding, Severity } from '../base/index.js'
import { type AtPart, type CodeWithParams, type ProcedureCodes, procedureFinding } from './codes.js'
import { type GearcaseInstance, readInstanceName, readPartNames } from './layout.js'
import { includesLevelCheck, type OilJob } from './listJobs.js'
import { listNotChecked, listNotTightened, listUncheckedSinceRun } from './needs/closing.js'
import type { MutableState } from './state.js'
import type { ProcedureContext, StepDraft } from './stepContext.js'
import { draftAt, draftDraining, getFilterState, getGearcaseState, getOpeningState } from './stepContext.js'

/** Work that is not done after the last step. */
export interface UndoneWork {
  readonly finding: Finding<ProcedureCodes>
  /** The steps that would do the work, in order. */
  readonly remedy: readonly StepDraft[]
}

/** Finds missing work that the services require, or that the machine needs before it is used again. */
export function findUndone(
  context: ProcedureContext,
  state: MutableState,
  document: DocumentReference,
): readonly UndoneWork[] {
  const { indexedSheet, jobs } = context
  const undone: UndoneWork[] = []
  const addUndone = (
    code: CodeWithParams<AtPart>,
    remedy: readonly StepDraft[],
    params: AtPart = {},
    severity: Severity = 'error',
  ): void => {
    undone.push({ finding: procedureFinding(code, severity, document, '/steps', params), remedy })
  }
  const addDraft = (code: CodeWithParams<AtPart>, draft: StepDraft, severity?: Severity): void => {
    const part = draft.on === undefined ? undefined : indexedSheet.parts.get(draft.on)
    const instance = draft.at?.instance
    addUndone(
      code,
      [draft],
      { ...readPartNames(part), ...(instance === undefined ? {} : { instance }) },
      severity,
    )
  }
  for (const job of jobs) {
    const missing = findMissingOilSteps(job, state)
    if (missing === undefined) continue
    const { gearcase, instance } = job.owner
    addUndone(missing.code, missing.remedy, {
      gearcase: gearcase.gearcase.name,
      ...readInstanceName(gearcase, instance),
    })
  }
  const instances = indexedSheet.instances
  for (const draft of listNotTightened(state, instances)) addDraft('procedure/part-not-tightened', draft)
  for (const draft of listNotChecked(state, instances)) addDraft('procedure/leaks-not-checked', draft)
  for (const draft of listUncheckedSinceRun(state, instances))
    addDraft('procedure/leaks-not-checked-after-run', draft, 'warning')
  for (const { path, shield } of indexedSheet.shields.values())
    if (state.shields[path] === 'off')
      addUndone('procedure/shield-left-off', [{ do: 'refit shield', on: path }], { part: shield.name })
  if (state.lifted.length > 0) addUndone('procedure/machine-not-lowered', [{ do: 'lower the machine' }])
  if (state.onRamps.length > 0) addUndone('procedure/machine-not-lowered', [{ do: 'drive off ramps' }])
  if (state.usedOil === 'in the pan') addUndone('procedure/used-oil-left', [{ do: 'take used oil away' }])
  if (!state.recorded && jobs.length > 0) addUndone('procedure/work-not-recorded', [{ do: 'record' }])
  return undone
}

/** The first steps that are missing for one oil space. */
function findMissingOilSteps(
  { owner, task, emptiedInstances }: OilJob,
  state: MutableState,
): { readonly code: CodeWithParams<AtPart>; readonly remedy: readonly StepDraft[] } | undefined {
  const { gearcase, instance } = owner
  const ownerState = getGearcaseState(state, owner)
  if (task === 'change') {
    const undrainedInstances = emptiedInstances.filter(
      (emptiedInstance) => getGearcaseState(state, emptiedInstance).oil === 'old',
    )
    if (undrainedInstances.length > 0)
      return { code: 'procedure/oil-not-drained', remedy: undrainedInstances.flatMap(draftDraining) }
    const closedDrains = emptiedInstances.flatMap((emptiedInstance) =>
      listClosedDrains(emptiedInstance, state),
    )
    if (closedDrains.length > 0) return { code: 'procedure/drain-left-closed', remedy: closedDrains }
    const unchangedFilters = emptiedInstances.flatMap((emptiedInstance) =>
      listUnchangedFilters(emptiedInstance, state),
    )
    if (unchangedFilters.length > 0) return { code: 'procedure/filter-not-changed', remedy: unchangedFilters }
    const pourSteps = draftAt('pour the oil', gearcase.fillOpening, instance)
    if (ownerState.oil !== 'new') return { code: 'procedure/oil-not-refilled', remedy: pourSteps }
  }
  if (!includesLevelCheck(gearcase, task)) return undefined
  const levelSteps = draftAt('check the level', gearcase.levelOpening, instance)
  if (!ownerState.levelChecked) return { code: 'procedure/level-not-checked', remedy: levelSteps }
  if (task !== 'change' || gearcase.fill?.level?.recheckAfterRun !== true) return undefined
  if (!ownerState.ranSinceFill) return { code: 'procedure/no-short-run', remedy: [{ do: 'short run' }] }
  return ownerState.levelCheckedSinceRun
    ? undefined
    : { code: 'procedure/level-not-rechecked', remedy: levelSteps }
}

/** Filters that should have been changed or cleaned and were not removed. */
function listUnchangedFilters(
  { gearcase, instance }: GearcaseInstance,
  state: MutableState,
): readonly StepDraft[] {
  return gearcase.filters
    .filter((filter) => filter.applies === 'yes' && !getFilterState(state, filter, instance).wasRemoved)
    .flatMap((filter) => draftAt('take off filter', filter, instance))
}

/** Further drain plugs that were never opened. */
function listClosedDrains(
  { gearcase, instance }: GearcaseInstance,
  state: MutableState,
): readonly StepDraft[] {
  const way = gearcase.emptying
  if (way?.kind !== 'drain plug') return []
  return way.also
    .filter(
      (candidate) => candidate.applies === 'yes' && !getOpeningState(state, candidate, instance).everCracked,
    )
    .flatMap((item) => draftAt('let drain', item, instance))
}
