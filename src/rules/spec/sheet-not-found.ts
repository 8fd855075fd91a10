import { findUnknownIds } from '../lookup/lookUp.js'
import { documentRule } from '../ruleMakers.js'

/**
 * A log, procedure or record that names a sheet that is not in the set, although other sheets are. Its
 * pointers cannot be looked up.
 * Judges: Finds a `sheet/id` that is the id of no sheet. Skipped in a set without a sheet, since the sheet
 * may be elsewhere.
 * Place: `/sheet/id`
 * Params: id: as written; known: up to eight ids of sheets; more: how many more exist; meant: the probable
 * id, if one is similar
 * Harm: record
 * House rule.
 */
export const rule = documentRule('machine-log', 'procedure', 'service-record')(
  'spec/sheet-not-found',
  'error',
  ({ document: { sheet }, set: { sheets } }) => {
    const known = [...new Set(sheets.map(({ document }) => document.id))]
    return known.length === 0 ? [] : findUnknownIds([{ path: '/sheet/id', id: sheet.id, known }])
  },
)
