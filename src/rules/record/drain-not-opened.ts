import { isDrainOpened } from '../../spec/index.js'
import { entryRule } from '../ruleMakers.js'

/**
 * An oil change for which nothing was opened to let the oil out. The old oil is still under the new oil, or
 * the record was written without doing the work.
 * Judges: Every judged change, on a gearcase whose `emptying` is not empty. Finds an entry if no entry for
 * the same gearcase and instance lists under `opened` an opening or cover that `emptying` names. Skipped if
 * one of the parts under `opened` is not on the sheet.
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
        (recordEntry) => recordEntry.gearcase === entry.gearcase && recordEntry.instance === entry.instance,
      )
      .flatMap((recordEntry) => recordEntry.opened)
    if (!isChange || isDrainOpened(document, entry, gearcase) || !openedParts.every(isKnown)) return []
    return [{ path: `${path}/opened`, params: { gearcase: gearcase.name } }]
  },
)
