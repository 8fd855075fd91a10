import { namedSeals } from '../lookup/namedSeals.js'
import { sizeMistake } from '../lookup/sizeMistake.js'
import { defineRule } from '../rule.js'

/**
 * A seal with a size of 0 mm: a figure that was not known was filled in. Leave the size out instead. House
 * rule.
 */
export const sizeIsNothing = defineRule({
  code: 'seal/size-is-nothing',
  severity: 'error',
  about: ['spec-sheet', 'stock'],
  check: ({ document, sheet }) =>
    namedSeals(document, sheet).flatMap(({ path, seal, name }) => {
      const size = sizeMistake(seal)
      return size === undefined ? [] : [{ path: `${path}/size/${size}`, params: { part: name, size } }]
    }),
})
