import { ACTIONS } from './actions.js'
import { EFFECTS } from './effects.js'
import { ASSUMED_CHANGES, NEEDS, type NeedName } from './needs.js'
import type { MutableState } from './state.js'
import {
  type ProcedureContext,
  placeStep,
  type StepContext,
  type StepDraft,
  type StepPlace,
  withState,
} from './stepContext.js'

interface FailedNeed {
  readonly name: NeedName
  /** Steps that would meet the need, in order. */
  readonly remedy: readonly StepDraft[]
}

/**
 * Applies one step to the state. A need that does not hold is reported once and then counts as met, so that one mistake
 * gives one finding.
 */
export function runStep(
  context: ProcedureContext,
  state: MutableState,
  step: StepDraft,
  place: StepPlace = placeStep(context, step),
): readonly FailedNeed[] {
  const stepContext = withState(place, state)
  const failed: FailedNeed[] = []
  for (const name of ACTIONS[step.do].needs) {
    const remedy = NEEDS[name](stepContext)
    if (remedy === true) continue
    failed.push({ name, remedy })
    const assume = ASSUMED_CHANGES[name]
    if (assume !== undefined) assume(stepContext)
    else for (const draft of remedy) applyEffects(withState(placeStep(context, draft), state))
  }
  applyEffects(stepContext)
  return failed
}

function applyEffects(context: StepContext): void {
  for (const name of ACTIONS[context.step.do].changes) EFFECTS[name](context)
}
