import { isConvertedWrongWay } from '../lookup/intervals.js'
import { intervalRule } from '../ruleMakers.js'

/**
 * Kilometres and miles of one interval that were converted the wrong way, such as 36,000 km and 60,000 mi.
 * The number was multiplied by 1.609 instead of divided, so one distance is 2.6 times the other.
 * Judges: Every stated interval with a distance, including overrides: each entry of `distance/printed` in the
 * other unit (km and mi). Finds a number of miles larger than the number of kilometres.
 * `quantity/interval-distances-differ` skips these.
 * Place: `<interval>/distance/printed/<place>`
 * Params: first: the first distance; second: the other distance
 * Harm: machine
 * Source: 1 mi = 1.609344 km exactly (international mile), so the number of miles is always smaller.
 */
export const rule = intervalRule(
  'quantity/distance-converted-wrong-way',
  'warning',
  ({ interval: { distance }, path }) =>
    (distance?.printed ?? []).flatMap((second, place) => {
      if (distance === undefined || !isConvertedWrongWay(distance, second)) return []
      const { value, unit } = distance
      const params = { first: { value, unit }, second: { value: second.value, unit: second.unit } }
      return [{ path: `${path}/distance/printed/${place}`, params }]
    }),
)
