import { chooseSide, exactIn, readBand } from '../../quantity/index.js'
import { isConvertedWrongWay } from '../lookup/intervals.js'
import { intervalRule } from '../ruleMakers.js'

/**
 * Kilometres and miles of one interval that are more than a tenth apart. Manuals print round numbers (`5000
 * km (3000 mi)`), but a difference this large is a misprint. The shorter distance still decides.
 * Judges: Every stated interval with a distance, including overrides: each entry of `distance/printed`,
 * converted to the unit of the first. Finds an entry that differs by more than a tenth of the first, except
 * those of `quantity/distance-converted-wrong-way`.
 * Place: `<interval>/distance/printed/<place>`
 * Params: first: the first distance; second: the other distance
 * Harm: job
 * House rule. Information only.
 */
export const rule = intervalRule(
  'quantity/interval-distances-differ',
  'info',
  ({ interval: { distance }, path }) => {
    if (distance === undefined) return []
    const { value, unit, printed = [] } = distance
    return printed.flatMap((second, place) => {
      if (isConvertedWrongWay(distance, second)) return []
      const tenPercentBand = readBand({ kind: 'nominal', value, unit }, unit, 10)
      if (chooseSide(exactIn(second, unit), tenPercentBand) === 0) return []
      const params = { first: { value, unit }, second: { value: second.value, unit: second.unit } }
      return [{ path: `${path}/distance/printed/${place}`, params }]
    })
  },
)
