import { type Cure, joinPointer } from '../base/index.js'
import type { ProcedureDocument, SpecSheet, Step } from '../spec/index.js'
import { nameStep } from './build/writer.js'
import type { Trouble } from './examine.js'
import { figuresOf } from './figuresOf.js'
import { findUndone } from './findUndone.js'
import { judgeStep } from './judgeStep.js'
import { runStep } from './runStep.js'
import { type Location, locate, type StepSeed, type World } from './site.js'
import { startState } from './startState.js'

/** Counts the troubles of many like lists of steps: what does not change with the list is looked up once a step. */
export interface Scale {
  readonly sheet: SpecSheet
  readonly world: World
  readonly known: Map<Step, KnownStep>
  /** Steps that may still be run in search of cures; a strange list must not keep anybody waiting. */
  readonly effort: { left: number }
}

interface KnownStep {
  readonly faults: number
  readonly canRun: boolean
  readonly location: Location
}

/** How many troubles a list of steps has; past `most` it stops counting and says one more. */
export function countTroubles(
  scale: Scale,
  steps: readonly Step[],
  most: number = Number.POSITIVE_INFINITY,
): number {
  const { world } = scale
  const state = startState(world.layout)
  const ids = new Set<string>()
  let count = 0
  for (const step of steps) {
    const { faults, canRun, location } = knowStep(scale, step)
    count += faults + (ids.has(step.id) ? 1 : 0)
    ids.add(step.id)
    scale.effort.left -= 1
    if (canRun) count += runStep(world, state, step, location).length
    if (count > most) return most + 1
  }
  return count + findUndone(world, state).length
}

function knowStep({ sheet, world, known }: Scale, step: Step): KnownStep {
  const found = known.get(step)
  if (found !== undefined) return found
  const { faults, canRun } = judgeStep(sheet, world, step, 0)
  const fresh = { faults: faults.length, canRun, location: locate(world, step) }
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
  scale: Scale,
  procedure: ProcedureDocument,
  trouble: Trouble,
  before: number,
): readonly Cure[] {
  const { steps } = procedure
  const near = weigh(scale, listNear(scale, steps, trouble), before - 1)
  if (near.length > 0) return near
  const far = weigh(scale, listFar(scale, steps, trouble), before - 1)
  // One step of two that are missing: as many troubles as before, but the next is nearer to mending.
  return far.length > 0 ? far : weigh(scale, listNear(scale, steps, trouble), before)
}

function weigh(scale: Scale, attempts: Iterable<Attempt>, most: number): readonly Cure[] {
  const better: { readonly cure: Cure; readonly left: number }[] = []
  for (const { cure, steps } of attempts) {
    if (scale.effort.left <= 0) break
    const left = countTroubles(scale, steps, most)
    if (left <= most) better.push({ cure, left })
  }
  better.sort((first, second) => first.left - second.left)
  return better.slice(0, 3).map(({ cure }) => cure)
}

/** Changes at the place of the trouble: a later step brought forward, as late as will do; else a missing one put in. */
function* listNear(scale: Scale, steps: readonly Step[], trouble: Trouble): Iterable<Attempt> {
  const { place, mend } = trouble
  for (const seed of mend) {
    for (const [from, step] of steps.entries()) {
      if (!isSame(step, seed)) continue
      if (from > place) {
        for (let to = place; to >= 0; to -= 1) yield move(steps, from, to)
        yield move(steps, place, from)
      } else if (place === steps.length) yield move(steps, from, steps.length - 1)
    }
    yield add(scale, steps, seed, place)
  }
}

/** Changes at every place of the list, earliest first. */
function* listFar(scale: Scale, steps: readonly Step[], trouble: Trouble): Iterable<Attempt> {
  const { place, mend } = trouble
  for (const seed of mend) {
    for (let to = 0; to <= steps.length; to += 1) yield add(scale, steps, seed, to)
    for (const [from, step] of steps.entries()) {
      if (!isSame(step, seed)) continue
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

function add(scale: Scale, steps: readonly Step[], seed: StepSeed, to: number): Attempt {
  const values = figuresOf(scale.sheet, scale.world, seed)
  const step: Step = {
    id: nameStep(seed, new Set(steps.map((one) => one.id))),
    ...seed,
    ...(Object.keys(values).length === 0 ? {} : { values }),
  }
  return {
    cure: { op: 'add', path: joinPointer(['steps', to]), value: step },
    steps: steps.toSpliced(to, 0, step),
  }
}

function isSame(step: Step, seed: StepSeed): boolean {
  const sameMark = seed.at?.wheelMark === undefined || seed.at.wheelMark === step.at?.wheelMark
  return step.do === seed.do && step.on === seed.on && step.at?.instance === seed.at?.instance && sameMark
}
