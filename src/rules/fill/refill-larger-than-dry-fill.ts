import { findLargerVolumes } from '../lookup/statedValues.js'
import { gearcaseRule } from '../ruleMakers.js'

/**
 * A refill larger than the dry fill. Some oil always stays behind after draining, so the figures were swapped
 * or one has the wrong unit.
 * Judges: The pair `oilSpace/fill/drainAndRefill` and `oilSpace/fill/dryFill` of every gearcase. Finds a low
 * volume of the refill above the high volume of the dry fill.
 * Place: the refill; the dry fill of an override that sets only the dry fill
 * Params: gearcase: its name; refill: low volume of the refill in mL; dryFill: high volume of the dry fill in mL
 * Harm: machine
 * Common practice, no source. Equal volumes are allowed.
 */
export const rule = gearcaseRule('fill/refill-larger-than-dry-fill', 'error', ([id, { name }], { sheet }) => {
  const fill = `/gearcases/${id}/oilSpace/fill`
  return findLargerVolumes(sheet.pairs(`${fill}/drainAndRefill`, `${fill}/dryFill`)).map(
    ({ path, low, high }) => ({
      path,
      params: { gearcase: name, refill: low, dryFill: high },
    }),
  )
})
