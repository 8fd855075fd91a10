import { requireShape } from '../base/index.js'
import type { Kit } from './kitContents.js'

/** Machines with the same kit. */
export interface KitGroup {
  readonly machines: readonly Kit['machine'][]
  /** The kit of the first machine. */
  readonly kit: Kit
}

/** Groups machines that need the same kit, in order; `buy` is not compared. */
export function groupKits(kits: readonly Kit[]): readonly KitGroup[] {
  const shape = [{ machine: {}, oil: [{ volume: {} }], seals: [{}], tools: [{}] }]
  requireShape('kits', kits, shape, 'pass the result of kitContents')
  const groups = new Map<string, { machines: Kit['machine'][]; kit: Kit }>()
  for (const kit of kits) {
    const { oil, seals, spares = [], filters = [], tools, sampleBottles, supplies = [], toCount = [] } = kit
    const key = JSON.stringify([
      oil.map(({ oil: name, volume }) => [name, volume.value]).sort(),
      seals.map(({ name, count }) => [name, count]).sort(),
      spares.map(({ name, count }) => [name, count]).sort(),
      filters.map(({ name, count }) => [name, count]).sort(),
      tools.map(({ id }) => id).sort(),
      sampleBottles,
      [...supplies].sort(),
      [...toCount].sort(),
    ])
    const group = groups.get(key) ?? { machines: [], kit }
    group.machines.push(kit.machine)
    groups.set(key, group)
  }
  return [...groups.values()]
}
