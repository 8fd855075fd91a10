import type { ProcedureDocument, SpecSheet, Step } from '../spec/index.js'
import { checkStep } from './checkStep.js'
import { findUndone } from './findUndone.js'
import { runStep } from './runStep.js'
import { initialState } from './state.js'
import { type ProcedureContext, placeStep, type StepPlace } from './stepContext.js'

/** Counts the troubles of many similar lists of steps, and checks each step only once. */
export interface TroubleCounter {
  readonly sheet: SpecSheet
  readonly context: ProcedureContext
  readonly known: Map<Step, StepCheck>
  /** Steps that may still be run in the search for cures. */
  readonly effort: { left: number }
}

interface StepCheck {
  readonly mistakes: number
  readonly canRun: boolean
  readonly place: StepPlace
}

/** Counts the troubles of a list of steps; stops above `limit` and returns the limit plus 1. */
export function countTroubles(
  counter: TroubleCounter,
  steps: ProcedureDocument['steps'],
  limit: number = Number.POSITIVE_INFINITY,
): number {
  const { context } = counter
  const state = initialState(context.layout)
  const ids = new Set<string>()
  let count = 0
  for (const step of steps) {
    const { mistakes, canRun, place } = checkKnownStep(counter, step)
    count += mistakes + (ids.has(step.id) ? 1 : 0)
    ids.add(step.id)
    counter.effort.left -= 1
    if (canRun) count += runStep(context, state, step, place).length
    if (count > limit) return limit + 1
  }
  return count + findUndone(context, state, { kind: 'procedure' }).length
}

function checkKnownStep({ sheet, context, known }: TroubleCounter, step: Step): StepCheck {
  const found = known.get(step)
  if (found !== undefined) return found
  const { findings, canRun } = checkStep(sheet, context, { step, place: 0, document: { kind: 'procedure' } })
  const check = { mistakes: findings.length, canRun, place: placeStep(context, step) }
  known.set(step, check)
  return check
}
