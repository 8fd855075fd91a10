import { entryRule } from '../ruleMakers.js'

/**
 * Chips or pieces on the magnet or in a filter, or metal in the oil, of a gearcase that was refilled anyway.
 * Something is breaking up inside. Stop, and have the gearcase opened before the machine works again. Fine
 * paste is normal wear.
 * Judges: Every judged entry with `refilled`. Finds a `magnet` of `chips` or `pieces`; else the first filter
 * with such a `found`; else an `oilFinding` of `metallic`.
 * Place: `/entries/<place>/magnet`, `/entries/<place>/filters/<place>/found` or `/entries/<place>/oilFinding`
 * Params: gearcase: its name; found: `chips`, `pieces` or `metallic`
 * Harm: machine
 * Common practice, no source.
 */
export const rule = entryRule('record/metal-in-the-oil', 'error', ({ path, entry, gearcase }) => {
  if (entry.refilled === undefined) return []
  const { magnet, filters = [], oilFinding } = entry
  const [metal] = [
    { at: 'magnet', found: magnet },
    ...filters.map(({ found }, place) => ({ at: `filters/${place}/found`, found })),
    { at: 'oilFinding', found: oilFinding },
  ].flatMap(({ at, found }) =>
    found === 'chips' || found === 'pieces' || found === 'metallic' ? [{ at, found }] : [],
  )
  if (metal === undefined) return []
  return [{ path: `${path}/${metal.at}`, params: { gearcase: gearcase.name, found: metal.found } }]
})
