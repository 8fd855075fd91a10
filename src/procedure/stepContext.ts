import type { Action, Id, Step } from '../spec/index.js'
import type {
  CoverLayout,
  FilterLayout,
  GearcaseInstance,
  GearcaseLayout,
  IndexedSheet,
  OpeningLayout,
  Part,
  SealLayout,
  ShieldLayout,
} from './layout.js'
import { findOwner, makeInstanceKey, makeStateKey } from './layout.js'
import type { OilJob } from './listJobs.js'
import type { MutableState } from './state.js'

/** A step without its id. */
export interface StepDraft {
  readonly do: Action
  readonly on?: string
  readonly at?: NonNullable<Step['at']>
}

/** The machine and its work, the same for all steps of a procedure. */
export interface ProcedureContext {
  readonly indexedSheet: IndexedSheet
  readonly jobs: readonly OilJob[]
  /** Whether water, dirt or lost oil would damage the gears if the machine ran or was towed before the oil change. */
  readonly mustNotRun: boolean
}

/** The parts of a step; every key is always present, which makes reading fast. */
export interface StepParts extends ProcedureContext {
  readonly step: StepDraft
  readonly part: Part | undefined
  readonly gearcase: GearcaseLayout | undefined
  readonly instance: Id | undefined
  /** The gearcase instance of the step, and the one that owns its oil. */
  readonly target: GearcaseInstance | undefined
  readonly owner: GearcaseInstance | undefined
  readonly opening: OpeningLayout | undefined
  readonly cover: CoverLayout | undefined
  readonly filter: FilterLayout | undefined
  readonly seal: SealLayout | undefined
  readonly shield: ShieldLayout | undefined
}

/** The parts of a step, and the state before it. */
export interface StepContext extends StepParts {
  readonly state: MutableState
}

/** Finds the parts of a step; its pointer must be valid or absent. */
export function findStepParts(
  { indexedSheet, jobs, mustNotRun }: ProcedureContext,
  step: StepDraft,
): StepParts {
  const part = step.on === undefined ? undefined : indexedSheet.parts.get(step.on)
  const instance = step.at?.instance
  const gearcase = part !== undefined && 'gearcase' in part ? part.gearcase : undefined
  return {
    indexedSheet,
    jobs,
    mustNotRun,
    step,
    part,
    gearcase,
    instance,
    target: gearcase && { gearcase, instance },
    owner: gearcase && findOwner(indexedSheet, gearcase, instance),
    opening: part !== undefined && 'opening' in part ? part.opening : undefined,
    cover: part !== undefined && 'cover' in part ? part.cover : undefined,
    filter: part !== undefined && 'filter' in part ? part.filter : undefined,
    seal: part !== undefined && 'seal' in part ? part.seal : undefined,
    shield: part?.kind === 'shield' ? part.shield : undefined,
  }
}

/**
 * The parts of a step with a state. Written key by key: a spread of this many keys is three times as slow.
 */
export function addState(place: StepParts, state: MutableState): StepContext {
  const { indexedSheet, jobs, mustNotRun, step, part, gearcase, instance, target, owner } = place
  const { opening, cover, filter, seal, shield } = place
  return {
    indexedSheet,
    jobs,
    mustNotRun,
    step,
    part,
    gearcase,
    instance,
    target,
    owner,
    opening,
    cover,
    filter,
    seal,
    shield,
    state,
  }
}

export function getOpeningState(state: MutableState, { path }: OpeningLayout, instance: Id | undefined) {
  return getState(state.openings, makeStateKey(path, instance))
}

export function getCoverState(state: MutableState, { path }: CoverLayout, instance: Id | undefined) {
  return getState(state.covers, makeStateKey(path, instance))
}

export function getFilterState(state: MutableState, { path }: FilterLayout, instance: Id | undefined) {
  return getState(state.filters, makeStateKey(path, instance))
}

export function getGearcaseState(state: MutableState, instance: GearcaseInstance) {
  return getState(state.gearcases, makeInstanceKey(instance))
}

/** The state of the opening, cover or filter of a step. */
export function getPartState({ state, opening, cover, filter, instance }: StepContext) {
  if (opening !== undefined) return getOpeningState(state, opening, instance)
  if (cover !== undefined) return getCoverState(state, cover, instance)
  return filter === undefined ? undefined : getFilterState(state, filter, instance)
}

function getState<T>(record: Record<string, T>, key: string): T {
  const found = record[key]
  if (found === undefined) throw new RangeError(`state has no part ${key}`)
  return found
}

/** A step on a part; an empty list without a part. */
export function draftAt(
  action: Action,
  part: { readonly path: string } | undefined,
  instance: Id | undefined,
): readonly StepDraft[] {
  return part === undefined ? [] : [makeDraft(action, part.path, instance)]
}

/** Another action on the part of a step or on a given part, without wheel marks. */
export function draftForSamePart(
  { step, instance }: StepContext,
  action: Action,
  part?: { readonly path: string },
): StepDraft {
  return makeDraft(action, part?.path ?? step.on, instance)
}

function makeDraft(action: Action, on: string | undefined, instance: Id | undefined): StepDraft {
  return { do: action, ...(on !== undefined && { on }), ...(instance !== undefined && { at: { instance } }) }
}

/** The step that empties this gearcase. */
export function draftDraining({ gearcase, instance }: GearcaseInstance): readonly StepDraft[] {
  const way = gearcase.emptying
  if (way?.kind === 'cover') return draftAt('let drain', way.cover, instance)
  return draftAt(way?.kind === 'suction' ? 'suck out the oil' : 'let drain', way?.opening, instance)
}

/** A precondition of a step: `true` if it is met, or the steps that would meet it, in order. */
export type Need = (context: StepContext) => true | readonly StepDraft[]

/** A need that is met if no steps are missing. */
export function metIfEmpty(missingSteps: readonly StepDraft[]): ReturnType<Need> {
  return missingSteps.length === 0 || missingSteps
}
