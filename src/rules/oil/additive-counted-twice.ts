import { compareExact, plus } from '../../quantity/index.js'
import { millilitres, statedVolume } from '../lookup/statedVolume.js'
import { defineRule } from '../rule.js'

/**
 * An additive said to come on top of the refill, where refill and additive together are more than the dry
 * gearcase takes: the refill already counts it, and the case would be overfilled. Common practice, no source.
 */
export const additiveCountedTwice = defineRule({
  code: 'oil/additive-counted-twice',
  severity: 'error',
  about: 'spec-sheet',
  check: ({ sheet }) =>
    sheet.oils.flatMap(({ path, choices, oilSpace }) =>
      choices.flatMap(({ additive }, place) => {
        if (additive === undefined || additive.includedInRefill) return []
        const volume = statedVolume(additive.volume)
        const refill = statedVolume(oilSpace.fill.drainAndRefill)
        const dryFill = statedVolume(oilSpace.fill.dryFill)
        if (volume === undefined || refill === undefined || dryFill === undefined) return []
        const tooMuch = compareExact(plus(refill.low, volume.low), dryFill.high) > 0
        const otherMistake =
          compareExact(volume.low, refill.high) >= 0 || compareExact(refill.low, dryFill.high) > 0
        if (!tooMuch || otherMistake) return []
        const at = `${path}/choices/${place}/additive/includedInRefill`
        const params = {
          additive: additive.name,
          volume: millilitres(volume.low),
          refill: millilitres(refill.low),
          dryFill: millilitres(dryFill.high),
        }
        return [{ path: at, params, cures: [{ op: 'replace' as const, path: at, value: true }] }]
      }),
    ),
})
