import { findLargerVolumes } from '../lookup/statedValues.js'
import { gearcaseRule } from '../ruleMakers.js'

/**
 * A portion of shared oil larger than the owner's whole refill, although it is part of that refill. The unit
 * is wrong, or the dry fill was used.
 * Judges: `oilSpace/portion` of every gearcase with a shared oil space, against the
 * `oilSpace/fill/drainAndRefill` of the gearcase that `with` names. Finds a low volume of the portion above
 * the high volume of the refill.
 * Place: the portion; the refill of an override that sets only the refill
 * Params: gearcase: name of the sharing gearcase; portion: low volume of the portion in mL; refill: high volume of
 * the refill in mL
 * Harm: machine
 * House rule. Equal volumes are allowed.
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
