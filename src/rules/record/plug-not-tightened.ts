import { entryRule } from '../ruleMakers.js'

/**
 * An opening or cover that was opened but not recorded as tightened. The plug may be loose. Check it before
 * the machine moves.
 * Judges: Every judged entry: each opened part that the sheet has. Finds a part that no entry for the same
 * gearcase and instance lists under `tightened`.
 * Place: `/entries/<place>/opened/<place>`
 * Params: part: the name of the part (see terms)
 * Harm: machine
 * Common practice, no source: everything opened is closed, tightened and recorded.
 */
export const rule = entryRule(
  'record/plug-not-tightened',
  'error',
  ({ path, entry, sheet }, { document }) => {
    const tightened = document.entries
      .filter(({ gearcase, instance }) => gearcase === entry.gearcase && instance === entry.instance)
      .flatMap((sameCaseEntry) => sameCaseEntry.tightened.map(({ on }) => on))
    return entry.opened.flatMap((opened, place) => {
      const part = sheet.parts.find((sheetPart) => sheetPart.path === opened)
      if (part === undefined || tightened.includes(opened)) return []
      return [{ path: `${path}/opened/${place}`, params: { part: part.name } }]
    })
  },
)
