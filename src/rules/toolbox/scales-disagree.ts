import { compareExact, type Exact, exactIn, exactOf, multiply } from '../../quantity/index.js'
import { wrenchRule } from '../ruleMakers.js'

/**
 * Two scales of one wrench whose ends are more than a quarter apart. They are engraved on the same tube, so
 * one has the wrong unit (inch-pounds for foot-pounds differ by a factor of 12) or a wrong digit.
 * Judges: Every wrench with two or more scales: `highest` of each later scale, converted to the unit of the
 * first, against `highest` of the first. Finds a scale if the larger end exceeds 1.25 × the smaller.
 * Place: `/wrenches/<id>/scales/<place>` of the later scale
 * Params: wrench: its name; first: the end of the first scale; other: the end of this scale
 * Harm: machine
 * Common practice, no source. The quarter is a house rule, wide enough for scales with different round ends.
 */
export const rule = wrenchRule('toolbox/scales-disagree', 'error', ([id, { name, scales }]) => {
  const [first, ...others] = scales
  if (first === undefined) return []
  return others.flatMap((other, place) => {
    const firstEnd = exactOf(first.highest)
    const otherEnd = exactIn({ value: other.highest, unit: other.unit }, first.unit)
    const areClose = (low: Exact, high: Exact) => compareExact(high, multiply(low, exactOf('1.25'))) <= 0
    if (areClose(firstEnd, otherEnd) && areClose(otherEnd, firstEnd)) return []
    const params = {
      wrench: name,
      first: { value: first.highest, unit: first.unit },
      other: { value: other.highest, unit: other.unit },
    }
    return [{ path: `/wrenches/${id}/scales/${place + 1}`, params }]
  })
})
