import { isDrainOpened } from '../../spec/index.js'
import { entryRule } from '../ruleMakers.js'

/**
 * An oil change on a gearcase of which no part was opened that lets the oil out: the old oil is still inside with the
 * new oil on top of it, or the record was written without the work.
 * Judges: Every judged change, on a gearcase whose `emptying` is not empty. Finds an entry if no opening
 * or cover that `emptying` names is under `opened` of any entry of the record for the same gearcase and instance. Not
 * judged if one of the parts under `opened` is not on the sheet.
 * Place: `/entries/<place>/opened`
 * Params: gearcase: its name
 * Harm: machine
 * Common practice, no source.
 */
export const rule = entryRule(
  'record/drain-not-opened',
  'error',
  ({ path, entry, sheet, gearcase, isChange }, { document }) => {
    const isKnown = (on: string) => sheet.parts.some(({ path: part }) => part === on)
    const openedParts = document.entries
      .filter(
        (otherEntry) => otherEntry.gearcase === entry.gearcase && otherEntry.instance === entry.instance,
      )
      .flatMap((otherEntry) => otherEntry.opened)
    if (!isChange || isDrainOpened(document, entry, gearcase) || !openedParts.every(isKnown)) return []
    return [{ path: `${path}/opened`, params: { gearcase: gearcase.name } }]
  },
)
