import { compareExact, exactOf, multiply } from '../../quantity/index.js'
import { readStatedVolume, toMillilitres } from '../lookup/statedValues.js'
import { gearcaseRule } from '../ruleMakers.js'

/**
 * A dry fill many times as large as the refill. Draining removes most of the oil, so one of the figures has a
 * wrong decimal point or unit.
 * Judges: The pair `oilSpace/fill/dryFill` and `oilSpace/fill/drainAndRefill` of every gearcase. Finds a low
 * volume of the dry fill above 5 times the high volume of the refill.
 * Place: the dry fill; the refill of an override that sets only the refill
 * Params: gearcase: its name; dryFill: low volume of the dry fill in mL; refill: high volume of the refill in mL
 * Harm: machine
 * Common practice, no source: the factor of 5 is our own estimate.
 */
export const rule = gearcaseRule('fill/dry-fill-far-above-refill', 'warning', ([id, { name }], { sheet }) => {
  const fill = `/gearcases/${id}/oilSpace/fill`
  return sheet.pairs(`${fill}/dryFill`, `${fill}/drainAndRefill`).flatMap(({ path, one, other }) => {
    const low = readStatedVolume(one)?.low
    const high = readStatedVolume(other)?.high
    if (low === undefined || high === undefined || compareExact(low, multiply(high, MAX_RATIO)) <= 0)
      return []
    return [{ path, params: { gearcase: name, dryFill: toMillilitres(low), refill: toMillilitres(high) } }]
  })
})

const MAX_RATIO = exactOf(5)
