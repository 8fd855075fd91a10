import type { SpecSheet, Step } from '../spec/index.js'
import { checkStep } from './checkStep.js'
import { runStep } from './runStep.js'
import type { MutableState } from './state.js'
import { findStepParts, type ProcedureContext, type StepParts } from './stepContext.js'

/** Counts the troubles of many similar lists of steps, and checks each step only once. */
export interface TroubleCounter {
  readonly sheet: SpecSheet
  readonly context: ProcedureContext
  readonly stepChecks: Map<Step, StepCheck>
  /** How many more steps the search for fixes may try, including cached ones. */
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
