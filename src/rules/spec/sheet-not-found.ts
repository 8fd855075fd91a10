import { unknownName } from '../lookup/unknownName.js'
import { defineRule } from '../rule.js'

/**
 * A log, procedure or record kept against a sheet that is not in a set which holds others: nothing in it
 * could be looked up. In a set without any sheet nothing is said, since the sheet may lie elsewhere. House
 * rule.
 */
export const sheetNotFound = defineRule({
  code: 'spec/sheet-not-found',
  severity: 'error',
  about: ['machine-log', 'procedure', 'service-record'],
  check: ({ document: { sheet }, set: { sheets } }) => {
    const known = [...new Set(sheets.map(({ document }) => document.id))]
    if (known.length === 0 || known.includes(sheet.id)) return []
    return [unknownName('/sheet/id', sheet.id, known)]
  },
})
