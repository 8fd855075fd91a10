import { findLargerVolumes } from '../lookup/readStatedVolume.js'
import { gearcaseRule } from '../ruleMakers.js'

/**
 * A gearcase that shares another's oil with a portion larger than the owner's whole refill: the portion is part of
 * that refill. The unit is wrong, or the dry fill was used.
 * Judges: Every gearcase with a shared oil space: pairs `oilSpace/portion` with `oilSpace/fill/drainAndRefill` of the
 * gearcase named by `with`. Finds a pair whose low volume of the portion exceeds the high volume of the refill.
 * Place: the portion; the refill of an override that sets only the refill
 * Params: gearcase: name of the sharing gearcase; portion: low volume of the portion in mL; refill: high volume of
 * the refill in mL
 * Harm: machine
 * House rule; equal volumes pass.
 */
export const rule = gearcaseRule(
  'fill/portion-larger-than-refill',
  'error',
  ([id, { name, oilSpace }], { sheet }) => {
    if (oilSpace.kind !== 'shared') return []
    const refillPath = `/gearcases/${oilSpace.with}/oilSpace/fill/drainAndRefill`
    return findLargerVolumes(sheet.pairs(`/gearcases/${id}/oilSpace/portion`, refillPath)).map(
      ({ path, low, high }) => ({ path, params: { gearcase: name, portion: low, refill: high } }),
    )
  },
)
