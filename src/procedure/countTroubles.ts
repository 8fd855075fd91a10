import { isSameJson } from '../base/index.js'
import type { Step } from '../spec/index.js'
import { findUndone } from './findUndone.js'
import { runCachedStep, STRIDE, type StepTrace, type TroubleCounter } from './runStep.js'
import { copyState } from './state.js'

/**
 * Counts the troubles of a list of steps similar to a traced one; above `limit` it stops and returns the
 * limit plus 1. In a range of steps that both lists have, it runs no more steps once the states are equal.
 */
export function countTroubles(
  counter: TroubleCounter,
  trace: StepTrace,
  steps: readonly Step[],
  limit: number = Number.POSITIVE_INFINITY,
): number {
  const { context, budget } = counter
  const { counts, states } = trace
  const ids = new Set<string>()
  let state = getItem(states, 0)
  if (trace.steps[0] !== steps[0]) state = copyState(state)
  let [place, count] = [0, 0]
  /** Adds the troubles of one step and moves to the next; false above the limit. */
  const addStepTroubles = (troubles: number): boolean => {
    const { id } = getItem(steps, place)
    count += troubles + (ids.has(id) ? 1 : 0)
    ids.add(id)
    place += 1
    return count <= limit
  }
  const runUntil = (end: number): boolean => {
    while (place < end)
      if (!addStepTroubles(runCachedStep(counter, state, getItem(steps, place)))) return false
    return true
  }
  const stopCounting = (): number => {
    budget.left -= place
    return limit + 1
  }
  for (const { from, to, shift } of listCommonRanges(trace.steps, steps)) {
    if (!runUntil(from)) return stopCounting()
    let gap = STRIDE
    for (let next = Math.ceil((from + shift) / STRIDE) * STRIDE - shift; next < to; next += gap, gap *= 2) {
      if (!runUntil(next)) return stopCounting()
      if (!isSameJson(state, getItem(states, (next + shift) / STRIDE))) continue
      const isLast = to === steps.length && to + shift === trace.steps.length
      const end = isLast ? to : Math.floor((to + shift) / STRIDE) * STRIDE - shift
      while (place < end)
        if (!addStepTroubles(getItem(counts, place + shift + 1) - getItem(counts, place + shift)))
          return stopCounting()
      if (isLast) {
        budget.left -= place
        return count + trace.undone
      }
      state = copyState(getItem(states, (end + shift) / STRIDE))
      break
    }
    if (!runUntil(to)) return stopCounting()
  }
  if (!runUntil(steps.length)) return stopCounting()
  budget.left -= place
  return count + findUndone(context, state, { kind: 'procedure' }).length
}

interface CommonRange {
  /** The indexes of the range in the second list; add `shift` for the first list. */
  readonly from: number
  readonly to: number
  readonly shift: number
}

/** Ranges of steps that are equal in both lists, where single steps were moved, added or removed. */
function* listCommonRanges(before: readonly Step[], after: readonly Step[]): Iterable<CommonRange> {
  let [from, shift] = [0, 0]
  while (from < after.length) {
    let to = from
    while (to < after.length && before[to + shift] === after[to]) to += 1
    if (to > from) yield { from, to, shift }
    if (before[to + shift + 1] === after[to]) shift += 1
    else {
      if (before[to + shift] === after[to + 1]) shift -= 1
      to += 1
    }
    from = to
  }
}

function getItem<T>(list: readonly T[], place: number): T {
  const found = list[place]
  if (found === undefined) throw new RangeError(`place must be below ${list.length}, got ${place}`)
  return found
}
