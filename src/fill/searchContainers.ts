import { compareBigInts } from './volumeAmount.js'

/** One kind of full container: its size in whole parts, and the count. */
export interface ContainerKind {
  readonly size: bigint
  readonly count: number
}

export interface ContainerSearch {
  /** The count of each kind, in the order of the argument. */
  readonly counts: readonly number[]
  readonly total: bigint
  /** Number of combinations tried; at the limit the answer is good, but perhaps not the best. */
  readonly tried: number
  readonly isComplete: boolean
}

export const MAX_COMBINATIONS = 100_000

/**
 * Finds the containers that cover a volume with the smallest remainder, then the fewest; in a tie, larger
 * sizes come first, then the order of the list. Undefined if all of them together are not enough.
 */
export function searchContainers(
  needed: bigint,
  kinds: readonly ContainerKind[],
): ContainerSearch | undefined {
  const sortedKinds = kinds
    .map((kind, index) => ({ ...kind, index }))
    .sort((a, b) => compareBigInts(b.size, a.size) || a.index - b.index)
  const remainingTotals = sortedKinds.map((_, from) =>
    sortedKinds.slice(from).reduce((sum, { size, count }) => sum + size * BigInt(count), 0n),
  )
  if ((remainingTotals[0] ?? 0n) < needed) return undefined
  let bestFound: { taken: number[]; left: bigint; number: number } | undefined
  let tried = 0
  const fewestByRemaining = sortedKinds.map(() => new Map<bigint, number>())
  const search = (position: number, remaining: bigint, containerCount: number, taken: number[]): void => {
    if (remaining <= 0n) {
      if (
        bestFound === undefined ||
        -remaining < bestFound.left ||
        (-remaining === bestFound.left && containerCount < bestFound.number)
      )
        bestFound = { taken: [...taken], left: -remaining, number: containerCount }
      return
    }
    const kind = sortedKinds[position]
    if (
      kind === undefined ||
      (remainingTotals[position] ?? 0n) < remaining ||
      (bestFound !== undefined && tried >= MAX_COMBINATIONS)
    )
      return
    const maxCount = Number((remaining + kind.size - 1n) / kind.size)
    // the best so far has no remainder, and this branch cannot use fewer containers
    if (bestFound !== undefined && bestFound.left === 0n && containerCount + maxCount >= bestFound.number)
      return
    const fewestSoFar = fewestByRemaining[position]?.get(remaining)
    if (fewestSoFar !== undefined && fewestSoFar <= containerCount) return
    fewestByRemaining[position]?.set(remaining, containerCount)
    const minCount = position === sortedKinds.length - 1 ? Math.min(maxCount, kind.count) : 0
    for (let count = Math.min(maxCount, kind.count); count >= minCount; count -= 1) {
      if (bestFound !== undefined && tried >= MAX_COMBINATIONS) return
      tried += 1
      search(position + 1, remaining - kind.size * BigInt(count), containerCount + count, [...taken, count])
    }
  }
  search(0, needed, 0, [])
  if (bestFound === undefined) return undefined
  const found: { taken: number[]; left: bigint } = bestFound
  const counts = kinds.map(() => 0)
  sortedKinds.forEach(({ index }, position) => {
    counts[index] = found.taken[position] ?? 0
  })
  return { counts, total: needed + found.left, tried, isComplete: tried < MAX_COMBINATIONS }
}
