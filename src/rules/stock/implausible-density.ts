import { exactIn, findNearestDouble } from '../../quantity/index.js'
import { containerRule } from '../ruleMakers.js'

/**
 * A density that no oil has, such as 0.89 kg/m³ instead of 0.89 g/cm³. Volumes at other temperatures would be
 * wrong.
 * Judges: Every container whose oil has `density15`. Finds one below 750 or above 1100 kg/m³.
 * Place: `/containers/<id>/oil/density15`
 * Params: container: its name; density: as written
 * Harm: job
 * Common practice, no source: gear oils have 850 to 920 kg/m³, some polyglycols 1050. The limits are our own
 * estimates.
 */
export const rule = containerRule(
  'stock/implausible-density',
  'error',
  ([
    id,
    {
      name,
      oil: { density15 },
    },
  ]) => {
    if (density15 === undefined) return []
    const density = findNearestDouble(exactIn(density15, 'kg/m3'))
    if (density >= MIN_DENSITY && density <= MAX_DENSITY) return []
    return [
      { path: `/containers/${id}/oil/density15`, params: { container: name, density: { ...density15 } } },
    ]
  },
)

const MIN_DENSITY = 750
const MAX_DENSITY = 1100
