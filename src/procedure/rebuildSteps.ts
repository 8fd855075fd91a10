import { isSameJson } from '../base/index.js'
import type { ProcedureDocument, Step } from '../spec/index.js'
import { nameStep } from './build/writer.js'
import { buildProcedure } from './buildProcedure.js'
import { checkStep } from './checkStep.js'
import { countTroubles } from './countTroubles.js'
import type { TroubleCounter } from './runKnownStep.js'
import { traceSteps } from './traceSteps.js'

/**
 * The steps of a procedure in the order of {@link buildProcedure}. A step that the writer has too keeps its id, note and
 * further figures; the writer's other steps stay after the step that they followed, or at the next place where they do no
 * harm. Undefined if no procedure can be built.
 */
export function rebuildSteps(
  counter: TroubleCounter,
  procedure: ProcedureDocument,
): readonly Step[] | undefined {
  const built = buildSteps(counter, procedure)
  if (built === undefined) return undefined
  const own = new Map<string, Step[]>()
  for (const step of procedure.steps) {
    const key = keyOfStep(step)
    own.set(key, [...(own.get(key) ?? []), step])
  }
  // First the steps that have their old ids, then the others in order.
  const sameId = built.map((step) => takeStep(own.get(keyOfStep(step)), ({ id }) => id === step.id))
  const pairs = built.map(
    (step, place) => [step, sameId[place] ?? takeStep(own.get(keyOfStep(step)), () => true)] as const,
  )
  const usedIds = new Set(pairs.flatMap(([, mine]) => mine?.id ?? []))
  const homes = new Map<Step, Step>()
  let steps: readonly Step[] = pairs.map(([step, mine]) => {
    const merged = mine === undefined ? renameStep(step, usedIds) : mergeStep(step, mine)
    usedIds.add(merged.id)
    if (mine !== undefined) homes.set(mine, merged)
    return merged
  })
  let previous: Step | undefined
  for (const step of procedure.steps) {
    const kept = homes.get(step)
    const withStep = kept === undefined ? insertOwnStep(counter, steps, step, previous, usedIds) : undefined
    if (withStep !== undefined) steps = withStep
    if (kept !== undefined || withStep !== undefined) previous = kept ?? step
  }
  return steps
}

function buildSteps(
  { sheet }: TroubleCounter,
  { id, name, identity, services, only, events }: ProcedureDocument,
): readonly Step[] | undefined {
  if (services.length === 0) return undefined
  const facts = { sheet, identity, services, ...(only && { only }), ...(events && { events }) }
  const built = buildProcedure(facts, { id, name })
  return built.ok && built.value.steps.length > 0 ? built.value.steps : undefined
}

/** What is done, and where; a wheel mark is the builder's to choose. */
function keyOfStep({ do: action, on, at }: Step): string {
  return JSON.stringify([action, on, at?.instance])
}

function takeStep(steps: Step[] = [], isFit: (step: Step) => boolean): Step | undefined {
  const place = steps.findIndex(isFit)
  return place === -1 ? undefined : steps.splice(place, 1)[0]
}

function renameStep(step: Step, usedIds: ReadonlySet<string>): Step {
  return usedIds.has(step.id) ? { ...step, id: nameStep(step, usedIds) } : step
}

function mergeStep(built: Step, mine: Step): Step {
  const { note: _note, ...rest } = built
  const merged = {
    ...rest,
    id: mine.id,
    ...((built.values ?? mine.values) && { values: { ...mine.values, ...built.values } }),
    ...(mine.note !== undefined && { note: mine.note }),
  }
  return isSameJson(merged, mine) ? mine : merged
}

/** The steps with a step of the writer's own, if there is a place where it causes no finding. */
function insertOwnStep(
  counter: TroubleCounter,
  steps: readonly Step[],
  step: Step,
  previous: Step | undefined,
  usedIds: Set<string>,
): readonly Step[] | undefined {
  const { sheet, context } = counter
  const written = { step, place: 0, document: { kind: 'procedure' } as const }
  const { canRun, findings } = checkStep(sheet, context, written)
  if (!canRun || findings.length > 0 || usedIds.has(step.id)) return undefined
  const home = previous === undefined ? 0 : steps.indexOf(previous) + 1
  const places = [...steps.keys(), steps.length].sort(
    (one, other) => Math.abs(one - home) - Math.abs(other - home),
  )
  const trace = traceSteps(counter, steps)
  for (const place of places) {
    if (counter.effort.left <= 0) return undefined
    const attempt = steps.toSpliced(place, 0, step)
    if (countTroubles(counter, trace, attempt, 0) > 0) continue
    usedIds.add(step.id)
    return attempt
  }
  return undefined
}
