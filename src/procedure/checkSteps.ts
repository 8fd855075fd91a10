import { type Cure, type Finding, joinPointer } from '../base/index.js'
import type { ProcedureDocument, Step } from '../spec/index.js'
import { makeStepId } from './build/writer.js'
import type { ProcedureCodes } from './codes.js'
import { countTroubles } from './countTroubles.js'
import { findStepFigures } from './findStepFigures.js'
import { findTroubles, type Trouble } from './findTroubles.js'
import { rankHarm } from './rankHarm.js'
import type { TroubleCounter } from './runCachedStep.js'
import type { StepDraft } from './stepContext.js'
import { type StepTrace, traceSteps } from './traceSteps.js'

/** Up to this number of findings every change is tried; with more, only the nearest ones. */
export const FULL_SEARCH_LIMIT = 4

/** The findings about the steps, each with single changes that would correct it. */
export function checkSteps(
  counter: TroubleCounter,
  procedure: ProcedureDocument,
  trace: StepTrace = traceSteps(counter, procedure.steps),
): readonly Finding<ProcedureCodes>[] {
  const { troubles } = findTroubles(counter.sheet, counter.context, procedure, undefined, counter.stepChecks)
  if (troubles.length === 0) return []
  counter.budget.left -= procedure.steps.length
  const findCuresFor = troubles.length > FULL_SEARCH_LIMIT ? findNearestCure : findCures
  // The search is limited, so the most dangerous findings come first.
  const findingByTrouble = new Map<Trouble, Finding<ProcedureCodes>>()
  for (const trouble of troubles.toSorted(
    (one, other) => rankHarm(one.finding.code) - rankHarm(other.finding.code),
  )) {
    const { finding } = trouble
    const cures = finding.cures ?? findCuresFor(counter, trace, trouble)
    findingByTrouble.set(trouble, cures.length === 0 ? finding : { ...finding, cures })
  }
  return troubles.map((trouble) => findingByTrouble.get(trouble) ?? trouble.finding)
}

interface Attempt {
  readonly cure: Cure
  readonly steps: readonly Step[]
}

/** Single changes that leave fewer troubles than before, best first. */
function findCures(counter: TroubleCounter, trace: StepTrace, trouble: Trouble): readonly Cure[] {
  const { steps, total } = trace
  const nearCures = listBestCures(counter, trace, listNearChanges(counter, steps, trouble), total - 1)
  if (nearCures.length > 0) return nearCures
  const otherCures = listBestCures(counter, trace, listOtherChanges(counter, steps, trouble), total - 1)
  if (otherCures.length > 0) return otherCures
  // If two steps are missing, adding one removes no trouble, but the next cure then removes both.
  return listBestCures(counter, trace, listNearChanges(counter, steps, trouble), total)
}

/** The first change near the trouble that leaves fewer troubles. */
function findNearestCure(
  counter: TroubleCounter,
  trace: StepTrace,
  { place, remedy }: Trouble,
): readonly Cure[] {
  const { steps, total } = trace
  for (const draft of remedy) {
    const later = steps.findIndex((step, at) => at > place && isSameWork(step, draft))
    const attempts = [
      ...(later === -1 ? [] : [moveStep(steps, later, place), moveStep(steps, place, later)]),
      addStep(steps, completeStep(counter, steps, draft), place),
    ]
    for (const attempt of attempts) {
      if (counter.budget.left <= 0) return []
      if (countTroubles(counter, trace, attempt.steps, total - 1) < total) return [attempt.cure]
    }
  }
  return []
}

function listBestCures(
  counter: TroubleCounter,
  trace: StepTrace,
  attempts: Iterable<Attempt>,
  limit: number,
): readonly Cure[] {
  const betterCures: { readonly cure: Cure; readonly troublesLeft: number }[] = []
  for (const { cure, steps } of attempts) {
    if (counter.budget.left <= 0) break
    const troublesLeft = countTroubles(counter, trace, steps, limit)
    if (troublesLeft <= limit) betterCures.push({ cure, troublesLeft })
  }
  betterCures.sort((first, second) => first.troublesLeft - second.troublesLeft)
  return betterCures.slice(0, 3).map(({ cure }) => cure)
}

/** Changes near the trouble: moving a later step forward, or adding a missing step. */
function* listNearChanges(
  counter: TroubleCounter,
  steps: readonly Step[],
  trouble: Trouble,
): Iterable<Attempt> {
  const { place, remedy } = trouble
  for (const draft of remedy) {
    for (const [from, step] of steps.entries()) {
      if (!isSameWork(step, draft)) continue
      if (from > place) {
        for (let to = place; to >= 0; to -= 1) yield moveStep(steps, from, to)
        yield moveStep(steps, place, from)
      } else if (place === steps.length) yield moveStep(steps, from, steps.length - 1)
    }
    yield addStep(steps, completeStep(counter, steps, draft), place)
  }
}

/** Changes anywhere in the list, earliest first. */
function* listOtherChanges(
  counter: TroubleCounter,
  steps: readonly Step[],
  trouble: Trouble,
): Iterable<Attempt> {
  const { place, remedy } = trouble
  for (const draft of remedy) {
    const added = completeStep(counter, steps, draft)
    for (let to = 0; to <= steps.length; to += 1) yield addStep(steps, added, to)
    for (const [from, step] of steps.entries()) {
      if (!isSameWork(step, draft)) continue
      for (let to = 0; to < steps.length; to += 1) if (to !== from) yield moveStep(steps, from, to)
    }
  }
  if (place >= steps.length) return
  for (let to = 0; to < steps.length; to += 1) if (to !== place) yield moveStep(steps, place, to)
  for (let from = 0; from < place; from += 1) yield moveStep(steps, from, place)
  yield { cure: { op: 'remove', path: joinPointer(['steps', place]) }, steps: steps.toSpliced(place, 1) }
}

function moveStep(steps: readonly Step[], from: number, to: number): Attempt {
  const step = steps[from]
  if (step === undefined) throw new RangeError(`from must be an index of the list, got ${from}`)
  return {
    cure: { op: 'move', from: joinPointer(['steps', from]), path: joinPointer(['steps', to]) },
    steps: steps.toSpliced(from, 1).toSpliced(to, 0, step),
  }
}

function completeStep({ sheet, context }: TroubleCounter, steps: readonly Step[], draft: StepDraft): Step {
  const values = findStepFigures(sheet, context, draft)
  return {
    id: makeStepId(draft, new Set(steps.map((one) => one.id))),
    ...draft,
    ...(Object.keys(values).length === 0 ? {} : { values }),
  }
}

function addStep(steps: readonly Step[], step: Step, to: number): Attempt {
  return {
    cure: { op: 'add', path: joinPointer(['steps', to]), value: step },
    steps: steps.toSpliced(to, 0, step),
  }
}

function isSameWork(step: Step, draft: StepDraft): boolean {
  const hasSameMark = draft.at?.wheelMark === undefined || draft.at.wheelMark === step.at?.wheelMark
  return (
    step.do === draft.do && step.on === draft.on && step.at?.instance === draft.at?.instance && hasSameMark
  )
}
