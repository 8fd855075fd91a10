import type { Id, SpecSheet } from '../spec/index.js'

/** Services that count as this one, directly or through others. */
export function listServicesThatSatisfy(sheet: SpecSheet, service: Id): readonly Id[] {
  const found = new Set<Id>()
  const open = [service]
  for (let next = open.pop(); next !== undefined; next = open.pop())
    for (const [id, { satisfies }] of Object.entries(sheet.services))
      if (id !== service && !found.has(id) && satisfies?.includes(next)) {
        found.add(id)
        open.push(id)
      }
  return [...found].sort()
}
