import { isSameJson } from '../base/index.js'
import type { ProcedureDocument, SpecSheet, Step } from '../spec/index.js'
import { makeStepId } from './build/writer.js'
import { buildProcedure } from './buildProcedure.js'
import { checkStep } from './checkStep.js'
import { countTroubles } from './countTroubles.js'
import { type TroubleCounter, traceSteps } from './runStep.js'

/**
 * The steps of a procedure in the order of {@link buildProcedure}. A step that the writer has too keeps its
 * id, note and further figures. The writer's other steps stay after the step that they followed, or move to
 * the nearest place where they do no harm. Undefined if no procedure can be built.
 */
export function rebuildSteps(
  counter: TroubleCounter,
  procedure: ProcedureDocument,
): readonly Step[] | undefined {
  const builtSteps = buildSameWork(counter.sheet, procedure)
  if (builtSteps === undefined) return undefined
  const ownSteps = new Map<string, Step[]>()
  for (const step of procedure.steps) {
    const key = makeStepKey(step)
    ownSteps.set(key, [...(ownSteps.get(key) ?? []), step])
  }
  // Match the steps with the same id first, then the others in order.
  const stepsWithSameId = builtSteps.map((step) =>
    takeStep(ownSteps.get(makeStepKey(step)), ({ id }) => id === step.id),
  )
  const stepPairs = builtSteps.map(
    (step, place) =>
      [step, stepsWithSameId[place] ?? takeStep(ownSteps.get(makeStepKey(step)), () => true)] as const,
  )
  const usedIds = new Set(stepPairs.flatMap(([, ownStep]) => ownStep?.id ?? []))
  const mergedByOwnStep = new Map<Step, Step>()
  let steps: readonly Step[] = stepPairs.map(([step, ownStep]) => {
    const mergedStep = ownStep === undefined ? renameStep(step, usedIds) : mergeStep(step, ownStep)
    usedIds.add(mergedStep.id)
    if (ownStep !== undefined) mergedByOwnStep.set(ownStep, mergedStep)
    return mergedStep
  })
  let previousStep: Step | undefined
  for (const step of procedure.steps) {
    const keptStep = mergedByOwnStep.get(step)
    const stepsWithOwn =
      keptStep === undefined ? insertOwnStep(counter, steps, step, previousStep, usedIds) : undefined
    if (stepsWithOwn !== undefined) steps = stepsWithOwn
    if (keptStep !== undefined || stepsWithOwn !== undefined) previousStep = keptStep ?? step
  }
  return steps
}

/** Action, part and instance; the builder chooses the wheel mark. */
function makeStepKey({ do: action, on, at }: Step): string {
  return JSON.stringify([action, on, at?.instance])
}

function takeStep(steps: Step[] = [], isMatch: (step: Step) => boolean): Step | undefined {
  const place = steps.findIndex(isMatch)
  return place === -1 ? undefined : steps.splice(place, 1)[0]
}

function renameStep(step: Step, usedIds: ReadonlySet<string>): Step {
  return usedIds.has(step.id) ? { ...step, id: makeStepId(step, usedIds) } : step
}

function mergeStep(builtStep: Step, ownStep: Step): Step {
  const { note: _note, ...builtFields } = builtStep
  const mergedStep = {
    ...builtFields,
    id: ownStep.id,
    ...((builtStep.values ?? ownStep.values) && { values: { ...ownStep.values, ...builtStep.values } }),
    ...(ownStep.note !== undefined && { note: ownStep.note }),
  }
  return isSameJson(mergedStep, ownStep) ? ownStep : mergedStep
}

/** Inserts one of the writer's own steps, if there is a place where it causes no finding. */
function insertOwnStep(
  counter: TroubleCounter,
  steps: readonly Step[],
  step: Step,
  previousStep: Step | undefined,
  usedIds: Set<string>,
): readonly Step[] | undefined {
  const { sheet, context } = counter
  const written = { step, place: 0, document: { kind: 'procedure' } as const }
  const { canRun, findings } = checkStep(sheet, context, written)
  if (!canRun || findings.length > 0 || usedIds.has(step.id)) return undefined
  const preferredPlace = previousStep === undefined ? 0 : steps.indexOf(previousStep) + 1
  const places = [...steps.keys(), steps.length].sort(
    (item, other) => Math.abs(item - preferredPlace) - Math.abs(other - preferredPlace),
  )
  const trace = traceSteps(counter, steps)
  for (const place of places) {
    if (counter.budget.left <= 0) return undefined
    const attempt = steps.toSpliced(place, 0, step)
    if (countTroubles(counter, trace, attempt, 0) > 0) continue
    usedIds.add(step.id)
    return attempt
  }
  return undefined
}

/** The built steps for the work of a procedure, on ramps if it uses them; undefined if no procedure can be built. */
export function buildSameWork(
  sheet: SpecSheet,
  { id, name, identity, services, only, events, steps }: ProcedureDocument,
): readonly Step[] | undefined {
  if (services.length === 0) return undefined
  const raiseOn = steps.some((step) => step.do === 'drive onto ramps') ? 'ramps' : 'stands'
  const facts = {
    sheet,
    identity,
    services,
    ...(only && { only }),
    ...(events && { events }),
    raiseOn,
  } as const
  const builtProcedure = buildProcedure(facts, { id, name })
  return builtProcedure.ok && builtProcedure.value.steps.length > 0 ? builtProcedure.value.steps : undefined
}
