import type { Id } from '../spec/index.js'
import type { GearcaseLayout, Layout } from './layout.js'

/** A gearcase and which of its instances. */
export interface GearcaseInstance {
  readonly gearcase: GearcaseLayout
  readonly instance: Id | undefined
}

/** The gearcase that owns the oil of another, and the instance of it that this one opens to. */
export function findOwner(
  layout: Layout,
  gearcase: GearcaseLayout,
  instance: Id | undefined,
): GearcaseInstance {
  const owner = layout.gearcases.get(gearcase.owner) ?? gearcase
  return { gearcase: owner, instance: owner.instances.includes(instance) ? instance : owner.instances[0] }
}

/** Every gearcase whose oil is that of this owner, the owner first. */
export function findSharers(layout: Layout, owner: GearcaseInstance): readonly GearcaseInstance[] {
  const sharers: GearcaseInstance[] = [owner]
  for (const gearcase of layout.gearcases.values()) {
    if (gearcase.owner !== owner.gearcase.id || gearcase.id === owner.gearcase.id) continue
    for (const instance of gearcase.instances)
      if (findOwner(layout, gearcase, instance).instance === owner.instance)
        sharers.push({ gearcase, instance })
  }
  return sharers
}
