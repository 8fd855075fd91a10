import type { SpecSheet, Step } from '../spec/index.js'
import { ACTIONS } from './actions.js'
import { checkStep } from './checkStep.js'
import { EFFECTS } from './effects.js'
import { findUndone } from './findUndone.js'
import { ASSUMED_CHANGES, NEEDS, type NeedName } from './needs.js'
import { copyState, type MutableState, makeInitialState } from './state.js'
import type { ProcedureContext, StepContext, StepDraft, StepParts } from './stepContext.js'
import { addState, findStepParts } from './stepContext.js'

interface FailedNeed {
  readonly name: NeedName
  /** Steps that would meet the need, in order. */
  readonly remedy: readonly StepDraft[]
}

/**
 * Applies one step to the state. An unmet need is reported once and then treated as met, so one mistake gives
 * one finding.
 */
export function runStep(
  context: ProcedureContext,
  state: MutableState,
  step: StepDraft,
  place: StepParts = findStepParts(context, step),
): readonly FailedNeed[] {
  const stepContext = addState(place, state)
  const failedNeeds: FailedNeed[] = []
  for (const name of ACTIONS[step.do].needs) {
    const remedy = NEEDS[name](stepContext)
    if (remedy === true) continue
    failedNeeds.push({ name, remedy })
    const assumeChange = ASSUMED_CHANGES[name]
    if (assumeChange !== undefined) assumeChange(stepContext)
    else for (const draft of remedy) applyEffects(addState(findStepParts(context, draft), state))
  }
  applyEffects(stepContext)
  return failedNeeds
}

function applyEffects(context: StepContext): void {
  for (const name of ACTIONS[context.step.do].changes) EFFECTS[name](context)
}

/** Counts the troubles of many similar lists of steps, and checks each step only once. */
export interface TroubleCounter {
  readonly sheet: SpecSheet
  readonly context: ProcedureContext
  readonly stepChecks: Map<Step, StepCheck>
  /** The number of further steps that the search for fixes may try, including cached ones. */
  readonly budget: { left: number }
}

interface StepCheck {
  readonly mistakes: number
  readonly canRun: boolean
  readonly place: StepParts
}

/** Runs a step and counts its troubles. */
export function runCachedStep(counter: TroubleCounter, state: MutableState, step: Step): number {
  const { mistakes, canRun, place } = checkCachedStep(counter, step)
  return canRun ? mistakes + runStep(counter.context, state, step, place).length : mistakes
}

function checkCachedStep({ sheet, context, stepChecks }: TroubleCounter, step: Step): StepCheck {
  const found = stepChecks.get(step)
  if (found !== undefined) return found
  const { findings, canRun } = checkStep(sheet, context, { step, place: 0, document: { kind: 'procedure' } })
  const check = { mistakes: findings.length, canRun, place: findStepParts(context, step) }
  stepChecks.set(step, check)
  return check
}

/** A list of steps that was run once, so that a similar list is run only where it differs. */
export interface StepTrace {
  readonly steps: readonly Step[]
  /** The states before the first step and after each {@link STRIDE} steps. */
  readonly states: readonly MutableState[]
  /** The number of troubles before the first step and after each step, without duplicate ids. */
  readonly counts: readonly number[]
  /** The number of findings about work that is not done at the end. */
  readonly undone: number
  readonly total: number
}

/** Copying a state costs as much as running a few steps. */
export const STRIDE = 8

/** Runs a list of steps and keeps the results for similar lists. */
export function traceSteps(counter: TroubleCounter, steps: readonly Step[]): StepTrace {
  const state = makeInitialState(counter.context.indexedSheet)
  const states: MutableState[] = []
  const counts = [0]
  let count = 0
  for (const [place, step] of steps.entries()) {
    if (place % STRIDE === 0) states.push(copyState(state))
    count += runCachedStep(counter, state, step)
    counts.push(count)
  }
  if (steps.length % STRIDE === 0) states.push(state)
  const undone = findUndone(counter.context, state, { kind: 'procedure' }).length
  const duplicates = steps.length - new Set(steps.map(({ id }) => id)).size
  return { steps, states, counts, undone, total: duplicates + count + undone }
}
