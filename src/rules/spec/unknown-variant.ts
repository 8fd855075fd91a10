import { sheetConditions } from '../lookup/sheetConditions.js'
import { unknownName } from '../lookup/unknownName.js'
import { findSheet } from '../partners.js'
import { defineRule } from '../rule.js'

/**
 * A variant that the sheet does not have, in a condition of the sheet or in what a log or a procedure says of
 * its machine: figures of that variant would never be found. House rule: variants are named by their ids.
 */
export const unknownVariant = defineRule({
  code: 'spec/unknown-variant',
  severity: 'error',
  about: ['spec-sheet', 'machine-log', 'procedure'],
  check: (document, set) => {
    const sheet = document.kind === 'spec-sheet' ? document : findSheet(set, document.sheet)?.document
    if (sheet === undefined) return []
    const known = Object.keys(sheet.machine.variants)
    const named =
      document.kind === 'spec-sheet'
        ? sheetConditions(document).flatMap(({ path, condition }) =>
            (condition.variants ?? []).map((id, place) => ({ path: `${path}/variants/${place}`, id })),
          )
        : [{ path: '/identity/variant', id: document.identity.variant }]
    return named.flatMap(({ path, id }) => {
      if (id === undefined || known.includes(id)) return []
      return [unknownName(path, id, known)]
    })
  },
})
