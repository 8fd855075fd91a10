import { containerRule } from '../ruleMakers.js'

/**
 * A pour point above 10 °C. The oil would not flow in a cool workshop. The minus sign was lost.
 * Judges: Every container whose oil has `pourPoint`. Finds one above 10 °C.
 * Place: `/containers/<id>/oil/pourPoint`
 * Params: container: its name; pourPoint: as written
 * Harm: machine
 * Common practice, no source: gear oils pour at −10 to −50 °C, the thickest at about 0 °C. The limit is our own
 * estimate.
 */
export const rule = containerRule(
  'stock/implausible-pour-point',
  'warning',
  ([
    id,
    {
      name,
      oil: { pourPoint },
    },
  ]) => {
    if (pourPoint === undefined || pourPoint.value <= MAX_POUR_POINT) return []
    return [
      { path: `/containers/${id}/oil/pourPoint`, params: { container: name, pourPoint: { ...pourPoint } } },
    ]
  },
)

const MAX_POUR_POINT = 10
