import { compareExact } from '../../quantity/index.js'
import { millilitres, statedVolume } from '../lookup/statedVolume.js'
import { gearcaseRule } from '../ruleMakers.js'

/**
 * A refill larger than the dry fill: some oil always stays behind after draining, so the two figures were swapped
 * or one has the wrong unit.
 * Judges: Every gearcase: pairs `oilSpace/fill/drainAndRefill` with `oilSpace/fill/dryFill`. Finds where the low
 * volume of the refill exceeds the high volume of the dry fill.
 * Place: the refill; where only the dry fill changes in an override, that dry fill
 * Params: gearcase: its name; refill: low volume of the refill in mL; dryFill: high volume of the dry fill in mL
 * Common practice, no source; equal volumes pass.
 */
export const rule = gearcaseRule('fill/refill-larger-than-dry-fill', 'error', ([id, { name }], { sheet }) => {
  const fill = `/gearcases/${id}/oilSpace/fill`
  return sheet.pairs(`${fill}/drainAndRefill`, `${fill}/dryFill`).flatMap(({ path, one, other }) => {
    const refill = statedVolume(one)
    const dryFill = statedVolume(other)
    if (refill === undefined || dryFill === undefined || compareExact(refill.low, dryFill.high) <= 0)
      return []
    return [
      {
        path,
        params: { gearcase: name, refill: millilitres(refill.low), dryFill: millilitres(dryFill.high) },
      },
    ]
  })
})
