import { compareExact } from '../../quantity/index.js'
import { readStatedVolume, toMillilitres } from '../lookup/statedValues.js'
import { oilsRule } from '../ruleMakers.js'

/**
 * As much additive as the whole refill, or more. The unit is wrong, usually litres for millilitres.
 * Judges: Every choice of oil with an additive, including overrides, against the gearcase's refill on the
 * base sheet. Finds an additive whose low volume is at least the high volume of the refill.
 * Place: `<oils>/choices/<place>/additive/volume`
 * Params: additive: its name; volume: its low volume in mL; refill: high volume of the refill in mL
 * Harm: machine
 * Common practice, no source: an additive is a small part of the oil.
 */
export const rule = oilsRule('oil/additive-exceeds-refill', 'error', ({ path, choices, oilSpace }) =>
  choices.flatMap(({ additive }, place) => {
    const volume = readStatedVolume(additive?.volume)
    const refill = readStatedVolume(oilSpace.fill.drainAndRefill)
    if (additive === undefined || volume === undefined || refill === undefined) return []
    if (compareExact(volume.low, refill.high) < 0) return []
    const params = {
      additive: additive.name,
      volume: toMillilitres(volume.low),
      refill: toMillilitres(refill.high),
    }
    return [{ path: `${path}/choices/${place}/additive/volume`, params }]
  }),
)
