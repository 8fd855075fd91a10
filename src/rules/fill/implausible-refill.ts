import type { GearcaseType } from '../../spec/index.js'
import { pickFirstPrinted } from '../lookup/printedValues.js'
import { hasDisagreement, listGearcaseValues, readStatedRange } from '../lookup/statedValues.js'
import { sheetRule } from '../ruleMakers.js'

/**
 * A refill far too large for the type of gearcase or the mass of the machine, or as small as a spoonful: `340
 * L` for 340 cc.
 * Judges: The first printed figure of every stated refill of the base sheet, or of overrides if the base
 * sheet states none. Finds one above the limit, or below 10 mL. The limit is the smaller of two volumes: by
 * type, 10 L (hub reduction, bevel box), 30 L (transfer case), 60 L (differential, final drive) or 150 L
 * (gearbox), times the number of instances if `per` is `all instances`; by mass, 1 L for each 15 kg of a
 * stated machine mass of 50 kg or more. Skipped if a second printed figure disagrees with the first, or if it
 * exceeds a stated dry fill (`fill/refill-larger-than-dry-fill`).
 * Place: the refill
 * Params: gearcase: its name; refill: as first printed; limit: the largest plausible volume in L
 * Harm: machine
 * Common practice, no source: the limits are our own estimates, several times the volume of such gearcases.
 */
export const rule = sheetRule('fill/implausible-refill', 'warning', ({ document, sheet }) => {
  const mass = document.machine.mass
  const massRange = mass === undefined || mass.kind === 'not stated' ? undefined : readStatedRange(mass, 'kg')
  return listGearcaseValues(sheet, 'oilSpace/fill/drainAndRefill').flatMap(
    ({ path, value, gearcase, isOverride }) => {
      const refill = readStatedRange(value, 'L')
      const { oilSpace, type, instances = {} } = gearcase
      if (refill === undefined || oilSpace.kind === 'shared' || hasDisagreement(sheet, path)) return []
      const { per, drainAndRefill, dryFill } = oilSpace.fill
      if (isOverride && drainAndRefill.kind !== 'not stated') return []
      const dryFillRange =
        dryFill === undefined || dryFill.kind === 'not stated' ? undefined : readStatedRange(dryFill, 'L')
      if (dryFillRange !== undefined && refill.low > dryFillRange.high) return []
      const count = per === 'all instances' ? Math.max(1, Object.keys(instances).length) : 1
      const limit = Math.min(
        MAX_LITRES[type] * count,
        (massRange !== undefined && massRange.high >= 50 ? massRange.high : Infinity) / KG_PER_LITRE,
      )
      if (refill.high <= limit && refill.low >= MIN_LITRES) return []
      const params = {
        gearcase: gearcase.name,
        refill: pickFirstPrinted(value),
        limit: { value: limit, unit: 'L' as const },
      }
      return [{ path, params }]
    },
  )
})

const KG_PER_LITRE = 15
const MIN_LITRES = 0.01
const MAX_LITRES: Readonly<Record<GearcaseType, number>> = {
  'hub reduction': 10,
  'bevel box': 10,
  'transfer case': 30,
  differential: 60,
  'final drive': 60,
  gearbox: 150,
}
