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
  let best: { taken: number[]; left: bigint; number: number } | undefined
  let tried = 0
  const seen = order.map(() => new Map<bigint, number>())
  const visit = (at: number, rest: bigint, number: number, taken: number[]): void => {
    if (rest <= 0n) {
      if (best === undefined || -rest < best.left || (-rest === best.left && number < best.number))
        best = { taken: [...taken], left: -rest, number }
      return
    }
    const kind = order[at]
    if (
      kind === undefined ||
      (totalsFrom[at] ?? 0n) < rest ||
      (best !== undefined && tried >= MAX_COMBINATIONS)
    )
      return
    const maxCount = Number((rest + kind.size - 1n) / kind.size)
    // the best so far leaves nothing over, and this branch cannot use fewer containers
    if (best !== undefined && best.left === 0n && number + maxCount >= best.number) return
    const before = seen[at]?.get(rest)
    if (before !== undefined && before <= number) return
    seen[at]?.set(rest, number)
    const minCount = at === order.length - 1 ? Math.min(maxCount, kind.count) : 0
    for (let count = Math.min(maxCount, kind.count); count >= minCount; count -= 1) {
      if (best !== undefined && tried >= MAX_COMBINATIONS) return
      tried += 1
      visit(at + 1, rest - kind.size * BigInt(count), number + count, [...taken, count])
    }
  }
  visit(0, need, 0, [])
  if (best === undefined) return undefined
  const found: { taken: number[]; left: bigint } = best
  const counts = kinds.map(() => 0)
  order.forEach(({ index }, place) => {
    counts[index] = found.taken[place] ?? 0
  })
  return { counts, total: need + found.left, tried, complete: tried < MAX_COMBINATIONS }
}
