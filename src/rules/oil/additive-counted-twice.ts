import { add, compareExact } from '../../quantity/index.js'
import { readStatedVolume, toMillilitres } from '../lookup/statedValues.js'
import { oilsRule } from '../ruleMakers.js'

/**
 * An additive on top of the refill, although both together exceed the dry fill. The refill already includes
 * it, so the gearcase would be overfilled.
 * Judges: Every choice of oil, including overrides, with an additive whose `includedInRefill` is false,
 * against the gearcase's refill and dry fill on the base sheet. Finds low refill + low additive > high dry
 * fill. Skipped if the low additive is at least the high refill, or the low refill exceeds the high dry fill;
 * other rules report these.
 * Place: `<oils>/choices/<place>/additive/includedInRefill`
 * Params: additive: its name; volume: its low volume in mL; refill: low volume of the refill in mL; dryFill: high
 * volume of the dry fill in mL
 * Harm: machine
 * Common practice, no source.
 */
export const rule = oilsRule('oil/additive-counted-twice', 'error', ({ path, choices, oilSpace }) =>
  choices.flatMap(({ additive }, place) => {
    if (additive === undefined || additive.includedInRefill) return []
    const volume = readStatedVolume(additive.volume)
    const refill = readStatedVolume(oilSpace.fill.drainAndRefill)
    const dryFill = readStatedVolume(oilSpace.fill.dryFill)
    if (volume === undefined || refill === undefined || dryFill === undefined) return []
    const exceedsDryFill = compareExact(add(refill.low, volume.low), dryFill.high) > 0
    const hasOtherMistake =
      compareExact(volume.low, refill.high) >= 0 || compareExact(refill.low, dryFill.high) > 0
    if (!exceedsDryFill || hasOtherMistake) return []
    const at = `${path}/choices/${place}/additive/includedInRefill`
    const params = {
      additive: additive.name,
      volume: toMillilitres(volume.low),
      refill: toMillilitres(refill.low),
      dryFill: toMillilitres(dryFill.high),
    }
    return [{ path: at, params, cures: [{ op: 'replace' as const, path: at, value: true }] }]
  }),
)
