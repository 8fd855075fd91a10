import { defineRule } from '../rule.js'

/**
 * A gearcase that the machine has several times over, left and right, with a quantity that does not say
 * whether it is for one of them or for all: half or twice the oil would be bought and poured. House rule:
 * every quantity of such a gearcase says `per`.
 */
export const instancesWithoutPer = defineRule({
  code: 'spec/instances-without-per',
  severity: 'error',
  about: 'spec-sheet',
  check: ({ document }) =>
    Object.entries(document.gearcases).flatMap(([id, { name, instances, oilSpace }]) => {
      const count = Object.keys(instances ?? {}).length
      if (count < 2 || oilSpace.kind === 'shared' || oilSpace.fill.per !== undefined) return []
      return [{ path: `/gearcases/${id}/oilSpace/fill`, params: { gearcase: name, count } }]
    }),
})
