import { lookUp } from '../lookup/lookUp.js'
import { entryRule } from '../ruleMakers.js'

/**
 * An oil change on a gearcase of which no part was opened that lets the oil out: the old oil is still inside with the
 * new oil on top of it, or the record was written without the work.
 * Judges: Every judged entry of a `change`, on a gearcase whose `emptying` is not empty. Finds an entry if no opening
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
  ({ path, entry, sheet, gearcase }, { document }) => {
    if (lookUp(sheet.document.services, entry.service)?.task !== 'change') return []
    const ways = gearcase.emptying.map((way) =>
      way.kind === 'cover' ? `covers/${way.cover}` : `openings/${way.opening}`,
    )
    const opened = document.entries
      .filter(({ gearcase: id, instance }) => id === entry.gearcase && instance === entry.instance)
      .flatMap((one) => one.opened)
    const isKnown = (on: string) => sheet.parts.some(({ path: part }) => part === on)
    if (
      ways.length === 0 ||
      !opened.every(isKnown) ||
      ways.some((way) => opened.includes(`/gearcases/${entry.gearcase}/${way}`))
    )
      return []
    return [{ path: `${path}/opened`, params: { gearcase: gearcase.name } }]
  },
)
