import type { Step } from '../spec/index.js'
import { findUndone } from './findUndone.js'
import { runCachedStep, type TroubleCounter } from './runCachedStep.js'
import { copyState, type MutableState, makeInitialState } from './state.js'

/** A list of steps that was run once, so that a similar list is run only where it differs. */
export interface StepTrace {
  readonly steps: readonly Step[]
  /** The states before the first step and after each {@link STRIDE} steps. */
  readonly states: readonly MutableState[]
  /** The number of troubles before the first step and after each step, without duplicate ids. */
  readonly counts: readonly number[]
  /** The number of findings about work that is not done at the end. */
  readonly undone: number
  readonly total: number
}

/** Copying a state costs as much as running a few steps. */
export const STRIDE = 8

/** Runs a list of steps and keeps the results for similar lists. */
export function traceSteps(counter: TroubleCounter, steps: readonly Step[]): StepTrace {
  const state = makeInitialState(counter.context.indexedSheet)
  const states: MutableState[] = []
  const counts = [0]
  let count = 0
  for (const [place, step] of steps.entries()) {
    if (place % STRIDE === 0) states.push(copyState(state))
    count += runCachedStep(counter, state, step)
    counts.push(count)
  }
  if (steps.length % STRIDE === 0) states.push(state)
  const undone = findUndone(counter.context, state, { kind: 'procedure' }).length
  const duplicates = steps.length - new Set(steps.map(({ id }) => id)).size
  return { steps, states, counts, undone, total: duplicates + count + undone }
}
