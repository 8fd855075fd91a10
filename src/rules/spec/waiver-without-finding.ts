import { sheetRule } from '../ruleMakers.js'

/**
 * A waiver without a finding. The mistake was corrected, or the code or pointer is mistyped and the finding
 * is still there. Correct or remove the waiver: it would hide a later finding at its pointer.
 * Judges: Every waiver of the sheet, when all other rules have run. Finds a waiver if no finding of the sheet
 * has its `code` (or the successor of a retired code) and `path`. Of two waivers of one finding, finds the
 * later.
 * Place: `/waivers/<place>`
 * Params: code: as written; waived: the path as written
 * Harm: record
 * House rule.
 */
export const rule = sheetRule(
  'spec/waiver-without-finding',
  'warning',
  ({ document, facts: { unusedWaivers = [] } }) =>
    unusedWaivers.flatMap((place) => {
      const waiver = document.waivers?.[place]
      if (waiver === undefined) return []
      return [{ path: `/waivers/${place}`, params: { code: waiver.code, waived: waiver.path } }]
    }),
)
