import { sheetRule } from '../ruleMakers.js'

/**
 * A waiver for which there is no finding: the mistake was corrected, or the code or the pointer is mistyped and the
 * finding is still there. Correct the waiver or remove it: it would hide a later finding at that place.
 * Judges: Every waiver of the sheet, once all other rules have run. Finds any whose `code` (a retired code counts as its successor) and
 * `path` are those of no finding of this sheet; of two waivers of one finding, finds the later.
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
