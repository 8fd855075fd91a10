import { type Cure, joinPointer } from '../base/index.js'
import type { ProcedureDocument, SpecSheet, Step } from '../spec/index.js'
import { nameStep } from './build/writer.js'
import type { Trouble } from './examine.js'
import { figuresOf } from './figuresOf.js'
import { findUndone } from './findUndone.js'
import { judgeStep } from './judgeStep.js'
import { runStep } from './runStep.js'
import { startState } from './startState.js'
import { type ProcedureContext, placeStep, type StepDraft, type StepPlace } from './stepContext.js'

/** Counts the troubles of many like lists of steps: what does not change with the list is looked up once a step. */
export interface TroubleCounter {
  readonly sheet: SpecSheet
  readonly context: ProcedureContext
  readonly known: Map<Step, KnownStep>
  /** Steps that may still be run in search of cures; a strange list must not keep anybody waiting. */
  readonly effort: { left: number }
}

interface KnownStep {
  readonly faults: number
  readonly canRun: boolean
  readonly place: StepPlace
}

/** How many troubles a list of steps has; past `limit` it stops counting and says one more. */
export function countTroubles(
  counter: TroubleCounter,
  steps: readonly Step[],
  limit: number = Number.POSITIVE_INFINITY,
): number {
  const { context } = counter
  const state = startState(context.layout)
  const ids = new Set<string>()
  let count = 0
  for (const step of steps) {
    const { faults, canRun, place } = knowStep(counter, step)
    count += faults + (ids.has(step.id) ? 1 : 0)
    ids.add(step.id)
    counter.effort.left -= 1
    if (canRun) count += runStep(context, state, step, place).length
    if (count > limit) return limit + 1
  }
  return count + findUndone(context, state).length
}

function knowStep({ sheet, context, known }: TroubleCounter, step: Step): KnownStep {
  const found = known.get(step)
  if (found !== undefined) return found
  const { faults, canRun } = judgeStep(sheet, context, step, 0)
  const fresh = { faults: faults.length, canRun, place: placeStep(context, step) }
  known.set(step, fresh)
  return fresh
}

interface Attempt {
  readonly cure: Cure
  readonly steps: readonly Step[]
}

/**
 * Single changes to the steps that leave fewer troubles than before, best first: a later step brought forward, a
 * missing one put in, the failing one moved or taken out.
 */
export function findCures(
  counter: TroubleCounter,
  procedure: ProcedureDocument,
  trouble: Trouble,
  before: number,
): readonly Cure[] {
  const { steps } = procedure
  const near = weigh(counter, listNear(counter, steps, trouble), before - 1)
  if (near.length > 0) return near
  const far = weigh(counter, listFar(counter, steps, trouble), before - 1)
  // One step of two that are missing: as many troubles as before, but the next is nearer to mending.
  return far.length > 0 ? far : weigh(counter, listNear(counter, steps, trouble), before)
}

function weigh(counter: TroubleCounter, attempts: Iterable<Attempt>, limit: number): readonly Cure[] {
  const better: { readonly cure: Cure; readonly left: number }[] = []
  for (const { cure, steps } of attempts) {
    if (counter.effort.left <= 0) break
    const left = countTroubles(counter, steps, limit)
    if (left <= limit) better.push({ cure, left })
  }
  better.sort((first, second) => first.left - second.left)
  return better.slice(0, 3).map(({ cure }) => cure)
}

/** Changes at the place of the trouble: a later step brought forward, as late as will do; else a missing one put in. */
function* listNear(counter: TroubleCounter, steps: readonly Step[], trouble: Trouble): Iterable<Attempt> {
  const { place, remedy } = trouble
  for (const draft of remedy) {
    for (const [from, step] of steps.entries()) {
      if (!isSame(step, draft)) continue
      if (from > place) {
        for (let to = place; to >= 0; to -= 1) yield move(steps, from, to)
        yield move(steps, place, from)
      } else if (place === steps.length) yield move(steps, from, steps.length - 1)
    }
    yield add(counter, steps, draft, place)
  }
}

/** Changes at every place of the list, earliest first. */
function* listFar(counter: TroubleCounter, steps: readonly Step[], trouble: Trouble): Iterable<Attempt> {
  const { place, remedy } = trouble
  for (const draft of remedy) {
    for (let to = 0; to <= steps.length; to += 1) yield add(counter, steps, draft, to)
    for (const [from, step] of steps.entries()) {
      if (!isSame(step, draft)) continue
      for (let to = 0; to < steps.length; to += 1) if (to !== from) yield move(steps, from, to)
    }
  }
  if (place >= steps.length) return
  for (let to = 0; to < steps.length; to += 1) if (to !== place) yield move(steps, place, to)
  for (let from = 0; from < place; from += 1) yield move(steps, from, place)
  yield {
    cure: { op: 'remove', path: joinPointer(['steps', place]) },
    steps: steps.toSpliced(place, 1),
  }
}

function move(steps: readonly Step[], from: number, to: number): Attempt {
  const step = steps[from]
  if (step === undefined) throw new RangeError(`from: a place in the list is wanted, not ${from}`)
  return {
    cure: { op: 'move', from: joinPointer(['steps', from]), path: joinPointer(['steps', to]) },
    steps: steps.toSpliced(from, 1).toSpliced(to, 0, step),
  }
}

function add(counter: TroubleCounter, steps: readonly Step[], draft: StepDraft, to: number): Attempt {
  const values = figuresOf(counter.sheet, counter.context, draft)
  const step: Step = {
    id: nameStep(draft, new Set(steps.map((one) => one.id))),
    ...draft,
    ...(Object.keys(values).length === 0 ? {} : { values }),
  }
  return {
    cure: { op: 'add', path: joinPointer(['steps', to]), value: step },
    steps: steps.toSpliced(to, 0, step),
  }
}

function isSame(step: Step, draft: StepDraft): boolean {
  const sameMark = draft.at?.wheelMark === undefined || draft.at.wheelMark === step.at?.wheelMark
  return step.do === draft.do && step.on === draft.on && step.at?.instance === draft.at?.instance && sameMark
}
