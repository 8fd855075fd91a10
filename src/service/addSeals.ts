import type { KitSeal } from './kitContents.js'

/** Adds up counts by the seal's name, in the order of first mention; none is left out. */
export function addSeals(seals: readonly KitSeal[]): readonly KitSeal[] {
  const sums = new Map<string, KitSeal>()
  for (const { seal, name, count } of seals)
    sums.set(name, { seal, name, count: count + (sums.get(name)?.count ?? 0) })
  return [...sums.values()].filter(({ count }) => count > 0)
}
