import type { Kit } from './kitContents.js'
import { type KitFilter, type KitOil, type KitSeal, sumFilters, sumOils, sumSeals } from './kitSums.js'

/** What to pick for a day's machines: the sums of their kits. */
export interface PickList {
  readonly oil: readonly KitOil[]
  readonly seals: readonly KitSeal[]
  readonly filters: readonly KitFilter[]
  /** Each tool once. */
  readonly tools: Kit['tools']
  readonly sampleBottles: number
  readonly supplies: readonly string[]
}

/** Adds up the kits of a day; tools and supplies are needed once. */
export function pickList(kits: readonly Kit[]): PickList {
  const tools = new Map(kits.flatMap((kit) => kit.tools.map((tool) => [tool.id, tool] as const)))
  return {
    oil: sumOils(kits.flatMap(({ oil }) => oil)),
    seals: sumSeals(kits.flatMap(({ seals, spares = [] }) => [...seals, ...spares])),
    filters: sumFilters(kits.flatMap(({ filters = [] }) => filters)) ?? [],
    tools: [...tools.values()],
    sampleBottles: kits.reduce((sum, { sampleBottles = 0 }) => sum + sampleBottles, 0),
    supplies: [...new Set(kits.flatMap(({ supplies = [] }) => supplies))],
  }
}
