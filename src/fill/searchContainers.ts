import { compareWhole } from './volumeAmount.js'

/** One kind of full container: its size in whole parts and how many there are. */
export interface ContainerKind {
  readonly size: bigint
  readonly count: number
}

export interface ContainerSearch {
  /** How many of each kind, in the order given. */
  readonly counts: readonly number[]
  readonly total: bigint
  /** Combinations tried; past the limit the answer is good but perhaps not the best. */
  readonly tried: number
  readonly complete: boolean
}

export const MAX_COMBINATIONS = 100_000

/**
 * The containers that cover a need with the smallest remainder, then the fewest; on a tie the larger sizes win, then
 * the kinds named first. Undefined if all of them together are not enough.
 */
export function searchContainers(need: bigint, kinds: readonly ContainerKind[]): ContainerSearch | undefined {
  const order = kinds
    .map((kind, index) => ({ ...kind, index }))
    .sort((a, b) => compareWhole(b.size, a.size) || a.index - b.index)
  const totalsFrom = order.map((_, from) =>
    order.slice(from).reduce((sum, { size, count }) => sum + size * BigInt(count), 0n),
  )
  if ((totalsFrom[0] ?? 0n) < need) return undefined
  let bestFound: { taken: number[]; left: bigint; number: number } | undefined
  let tried = 0
  const seen = order.map(() => new Map<bigint, number>())
  const search = (at: number, remaining: bigint, number: number, taken: number[]): void => {
    if (remaining <= 0n) {
      if (
        bestFound === undefined ||
        -remaining < bestFound.left ||
        (-remaining === bestFound.left && number < bestFound.number)
      )
        bestFound = { taken: [...taken], left: -remaining, number }
      return
    }
    const kind = order[at]
    if (
      kind === undefined ||
      (totalsFrom[at] ?? 0n) < remaining ||
      (bestFound !== undefined && tried >= MAX_COMBINATIONS)
    )
      return
    const maxCount = Number((remaining + kind.size - 1n) / kind.size)
    // the best so far leaves nothing over, and this branch cannot use fewer containers
    if (bestFound !== undefined && bestFound.left === 0n && number + maxCount >= bestFound.number) return
    const before = seen[at]?.get(remaining)
    if (before !== undefined && before <= number) return
    seen[at]?.set(remaining, number)
    const minCount = at === order.length - 1 ? Math.min(maxCount, kind.count) : 0
    for (let count = Math.min(maxCount, kind.count); count >= minCount; count -= 1) {
      if (bestFound !== undefined && tried >= MAX_COMBINATIONS) return
      tried += 1
      search(at + 1, remaining - kind.size * BigInt(count), number + count, [...taken, count])
    }
  }
  search(0, need, 0, [])
  if (bestFound === undefined) return undefined
  const found: { taken: number[]; left: bigint } = bestFound
  const counts = kinds.map(() => 0)
  order.forEach(({ index }, place) => {
    counts[index] = found.taken[place] ?? 0
  })
  return { counts, total: need + found.left, tried, complete: tried < MAX_COMBINATIONS }
}
