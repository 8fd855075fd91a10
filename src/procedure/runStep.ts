import type { Severity } from '../base/index.js'
import { ACTIONS } from './actions.js'
import { EFFECTS } from './effects.js'
import { findNeed, type NeedName } from './needs.js'
import type { MutableState } from './state.js'
import {
  findStepContext,
  type ProcedureContext,
  placeStep,
  type StepContext,
  type StepDraft,
  type StepPlace,
} from './stepContext.js'

export interface FailedNeed {
  readonly name: NeedName
  readonly severity: Severity
  readonly remedy: readonly StepDraft[]
}

/**
 * Does one step to the state. A need that does not hold is told once and then taken as held, so that one mistake
 * gives one finding and not a tail of them.
 */
export function runStep(
  context: ProcedureContext,
  state: MutableState,
  step: StepDraft,
  place: StepPlace = placeStep(context, step),
): readonly FailedNeed[] {
  const stepContext: StepContext = { ...place, state }
  const row = ACTIONS[step.do]
  const failed: FailedNeed[] = []
  for (const name of row.needs) {
    const need = findNeed(name)
    if (need.holds(stepContext)) continue
    const remedy = need.remedy(stepContext)
    failed.push({ name, severity: need.severity, remedy })
    if (need.assume !== undefined) need.assume(stepContext)
    else for (const draft of remedy) change(findStepContext(context, state, draft))
  }
  change(stepContext)
  return failed
}

function change(stepContext: StepContext): void {
  for (const name of ACTIONS[stepContext.step.do].changes) EFFECTS[name](stepContext)
}
