import type { Id, SpecSheet } from '../spec/index.js'

/** The oil space whose oil this gearcase runs in: its own, or that of the gearcase it shares with. */
export function findOilOwner(sheet: SpecSheet, gearcase: Id): Id {
  const seen = new Set<Id>()
  let owner = gearcase
  while (!seen.has(owner)) {
    seen.add(owner)
    const space = Object.hasOwn(sheet.gearcases, owner) ? sheet.gearcases[owner]?.oilSpace : undefined
    if (space?.kind !== 'shared') return owner
    owner = space.with
  }
  return gearcase
}
