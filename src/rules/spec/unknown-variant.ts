import { findUnknownIds } from '../lookup/lookUp.js'
import { documentRule } from '../ruleMakers.js'

/**
 * A variant that the sheet does not have, in a condition of the sheet or in the identity of a log or
 * procedure. Figures of that variant would never be found.
 * Judges: `variants` of every condition; `identity/variant` of a log or procedure whose sheet is in the set. Finds
 * each id that is not a variant of the sheet.
 * Place: `<condition>/variants/<place>`, or `/identity/variant`
 * Params: id: as written; known: up to eight ids of variants; more: how many more exist; meant: the probable
 * id, if one is similar
 * Harm: job
 * House rule: variants are named by their ids.
 */
export const rule = documentRule('spec-sheet', 'machine-log', 'procedure')(
  'spec/unknown-variant',
  'error',
  ({ document, sheet }) => {
    if (sheet === undefined) return []
    const known = Object.keys(sheet.document.machine.variants)
    const namedVariants =
      document.kind === 'spec-sheet'
        ? sheet.conditions.flatMap(({ path, condition }) =>
            (condition.variants ?? []).map((id, place) => ({ path: `${path}/variants/${place}`, id })),
          )
        : [{ path: '/identity/variant', id: document.identity.variant }]
    return findUnknownIds(
      namedVariants.flatMap(({ path, id }) => (id === undefined ? [] : [{ path, id, known }])),
    )
  },
)
