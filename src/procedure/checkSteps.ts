import { type Finding, type Fix, joinPointer } from '../base/index.js'
import type { ProcedureDocument, Step } from '../spec/index.js'
import { makeStepId } from './build/writer.js'
import type { ProcedureCodes } from './codes.js'
import { countTroubles } from './countTroubles.js'
import { findStepFigures } from './findStepFigures.js'
import { findTroubles, type Trouble } from './findTroubles.js'
import { rankHarm } from './rankHarm.js'
import { type StepTrace, type TroubleCounter, traceSteps } from './runStep.js'
import type { StepDraft } from './stepContext.js'

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
  const findFixesFor = troubles.length > FULL_SEARCH_LIMIT ? findNearestFix : findFixes
  // The search is limited, so the most dangerous findings come first.
  const findingByTrouble = new Map<Trouble, Finding<ProcedureCodes>>()
  for (const trouble of troubles.toSorted(
    (first, second) => rankHarm(first.finding.code) - rankHarm(second.finding.code),
  )) {
    const { finding } = trouble
    const fixes = finding.cures ?? findFixesFor(counter, trace, trouble)
    findingByTrouble.set(trouble, fixes.length === 0 ? finding : { ...finding, cures: fixes })
  }
  return troubles.map((trouble) => findingByTrouble.get(trouble) ?? trouble.finding)
}

interface Attempt {
  readonly fix: Fix
  readonly steps: readonly Step[]
}

/** Single changes with fewer troubles than before, best first. */
function findFixes(counter: TroubleCounter, trace: StepTrace, trouble: Trouble): readonly Fix[] {
  const { steps, total } = trace
  const nearFixes = listBestFixes(counter, trace, listNearChanges(counter, steps, trouble), total - 1)
  if (nearFixes.length > 0) return nearFixes
  const otherFixes = listBestFixes(counter, trace, listOtherChanges(counter, steps, trouble), total - 1)
  if (otherFixes.length > 0) return otherFixes
  // If two steps are missing, adding one removes no trouble, but the next fix then removes both.
  return listBestFixes(counter, trace, listNearChanges(counter, steps, trouble), total)
}

/** The first change near the trouble that reduces the number of troubles. */
function findNearestFix(
  counter: TroubleCounter,
  trace: StepTrace,
  { place, remedy }: Trouble,
): readonly Fix[] {
  const { steps, total } = trace
  for (const draft of remedy) {
    const laterPlace = steps.findIndex((step, at) => at > place && isSameWork(step, draft))
    const attempts = [
      ...(laterPlace === -1 ? [] : [moveStep(steps, laterPlace, place), moveStep(steps, place, laterPlace)]),
      addStep(steps, completeStep(counter, steps, draft), place),
    ]
    for (const attempt of attempts) {
      if (counter.budget.left <= 0) return []
      if (countTroubles(counter, trace, attempt.steps, total - 1) < total) return [attempt.fix]
    }
  }
  return []
}

function listBestFixes(
  counter: TroubleCounter,
  trace: StepTrace,
  attempts: Iterable<Attempt>,
  limit: number,
): readonly Fix[] {
  const betterFixes: { readonly fix: Fix; readonly troublesLeft: number }[] = []
  for (const { fix, steps } of attempts) {
    if (counter.budget.left <= 0) break
    const troublesLeft = countTroubles(counter, trace, steps, limit)
    if (troublesLeft <= limit) betterFixes.push({ fix, troublesLeft })
  }
  betterFixes.sort((first, second) => first.troublesLeft - second.troublesLeft)
  return betterFixes.slice(0, 3).map(({ fix }) => fix)
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
  yield { fix: { op: 'remove', path: joinPointer(['steps', place]) }, steps: steps.toSpliced(place, 1) }
}

function moveStep(steps: readonly Step[], from: number, to: number): Attempt {
  const step = steps[from]
  if (step === undefined) throw new RangeError(`from must be an index of the list, got ${from}`)
  return {
    fix: { op: 'move', from: joinPointer(['steps', from]), path: joinPointer(['steps', to]) },
    steps: steps.toSpliced(from, 1).toSpliced(to, 0, step),
  }
}

function completeStep({ sheet, context }: TroubleCounter, steps: readonly Step[], draft: StepDraft): Step {
  const values = findStepFigures(sheet, context, draft)
  return {
    id: makeStepId(draft, new Set(steps.map((step) => step.id))),
    ...draft,
    ...(Object.keys(values).length === 0 ? {} : { values }),
  }
}

function addStep(steps: readonly Step[], step: Step, to: number): Attempt {
  return {
    fix: { op: 'add', path: joinPointer(['steps', to]), value: step },
    steps: steps.toSpliced(to, 0, step),
  }
}

function isSameWork(step: Step, draft: StepDraft): boolean {
  const hasSameMark = draft.at?.wheelMark === undefined || draft.at.wheelMark === step.at?.wheelMark
  return (
    step.do === draft.do && step.on === draft.on && step.at?.instance === draft.at?.instance && hasSameMark
  )
}
