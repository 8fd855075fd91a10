import type { Id, SpecSheet } from '../spec/index.js'

/** The instances of a gearcase, or `[undefined]` where it is there once. */
export function listInstances(sheet: SpecSheet, gearcase: Id): readonly (Id | undefined)[] {
  const instances = sheet.gearcases[gearcase]?.instances
  const ids = instances === undefined ? [] : Object.keys(instances)
  return ids.length === 0 ? [undefined] : ids
}
