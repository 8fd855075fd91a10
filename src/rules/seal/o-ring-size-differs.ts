import { checkORing } from '../../seal/index.js'
import { namedSeals } from '../lookup/namedSeals.js'
import { sizeMistake } from '../lookup/sizeMistake.js'
import { defineRule } from '../rule.js'

/**
 * An o-ring whose dash number and printed size are two different rings: one of them was read from another
 * line, and the wrong ring would be bought. Source: AS568 rows 0xx to 2xx, read second hand; other numbers
 * are not judged.
 */
export const oRingSizeDiffers = defineRule({
  code: 'seal/o-ring-size-differs',
  severity: 'error',
  about: ['spec-sheet', 'stock'],
  check: ({ document, sheet }) =>
    namedSeals(document, sheet).flatMap(({ path, seal, name }) => {
      if (seal.kind !== 'o-ring' || sizeMistake(seal) !== undefined) return []
      const { answer, reasons } = checkORing(seal)
      const [reason] = reasons
      if (answer !== 'differs' || reason === undefined) return []
      return [{ path: `${path}/size`, params: { part: name, reason: { ...reason } } }]
    }),
})
