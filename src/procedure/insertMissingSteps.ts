import type { Step } from '../spec/index.js'
import { makeStepId } from './build/writer.js'
import type { TroubleCounter } from './runCachedStep.js'
import { traceSteps } from './traceSteps.js'

/**
 * Inserts missing built steps into the writer's steps, each after the step that it follows in the built
 * order. Built steps that correct nothing are left out.
 */
export function insertMissingSteps(
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
    const withoutStep = steps.filter((one) => one !== step)
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
