import { type JsonPointer, joinPointer } from '../base/index.js'
import type { Id, ProcedureDocument, SpecSheet } from '../spec/index.js'

/** The gearcase that owns the oil of this gearcase. */
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

/** The instances of a gearcase; `[undefined]` if it has none. */
export function listInstances(sheet: SpecSheet, gearcase: Id): readonly (Id | undefined)[] {
  const instances = sheet.gearcases[gearcase]?.instances
  const ids = instances === undefined ? [] : Object.keys(instances)
  return ids.length === 0 ? [undefined] : ids
}

/** The openings and covers of gearcases without steps, for which the sheet only gives figures. */
export function listPartsWithoutSteps(
  sheet: SpecSheet,
  gearcases: readonly Id[],
  { steps }: Pick<ProcedureDocument, 'steps'>,
): readonly JsonPointer[] {
  const gearcasesWithSteps = new Set(steps.map(({ on = '' }) => on.split('/')[2]))
  return gearcases
    .filter((id) => !gearcasesWithSteps.has(id))
    .flatMap((id) => {
      const { openings = {}, covers = {} } = sheet.gearcases[id] ?? {}
      return Object.entries({ openings, covers }).flatMap(([list, parts]) =>
        Object.keys(parts).map((part) => joinPointer(['gearcases', id, list, part])),
      )
    })
}

/** Services that count as this one, directly or through others. */
export function listSatisfyingServices(sheet: SpecSheet, service: Id): readonly Id[] {
  const found = new Set<Id>()
  const pending = [service]
  for (let next = pending.pop(); next !== undefined; next = pending.pop())
    for (const [id, { satisfies }] of Object.entries(sheet.services))
      if (id !== service && !found.has(id) && satisfies?.includes(next)) {
        found.add(id)
        pending.push(id)
      }
  return [...found].sort()
}
