import { namedSeals } from '../lookup/namedSeals.js'
import { sizeMistake } from '../lookup/sizeMistake.js'
import { defineRule } from '../rule.js'

/**
 * A seal with a size of 0 mm: a figure that was not known was filled in. Leave the size out instead.
 * Judges: Every seal with a `size`, of a sheet, overrides included, or of a stock. Finds the first of its figures
 * that is zero.
 * Place: `<seal>/size/<figure>`
 * Params: part: the name of the part (see terms), or of the seal on the shelf; size: key of the figure
 * House rule.
 */
export const zeroSize = defineRule({
  code: 'seal/zero-size',
  severity: 'error',
  about: ['spec-sheet', 'stock'],
  check: ({ document, sheet }) =>
    namedSeals(document, sheet).flatMap(({ path, seal, name }) => {
      const size = sizeMistake(seal)
      return size === undefined ? [] : [{ path: `${path}/size/${size}`, params: { part: name, size } }]
    }),
})
