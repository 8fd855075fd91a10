import { ACTIONS } from './actions.js'
import { EFFECTS } from './effects.js'
import { ASSUMED_CHANGES, NEEDS, type NeedName } from './needs.js'
import type { MutableState } from './state.js'
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
