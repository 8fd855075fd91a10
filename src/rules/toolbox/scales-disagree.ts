import { compareExact, type Exact, exactIn, exactOf, times } from '../../quantity/index.js'
import { defineRule } from '../rule.js'

/**
 * Two scales of one wrench whose ends are more than a quarter apart: they are engraved on the same tube, so
 * one carries the wrong unit (inch-pounds for foot-pounds is twelve times off) or a slipped digit. Common
 * practice, no source; the quarter is a house rule, wide enough for scales whose round ends differ.
 */
export const scalesDisagree = defineRule({
  code: 'toolbox/scales-disagree',
  severity: 'error',
  about: 'toolbox',
  check: ({ document: { wrenches } }) =>
    Object.entries(wrenches).flatMap(([id, { name, scales }]) => {
      const [first, ...others] = scales
      if (first === undefined) return []
      return others.flatMap((other, place) => {
        const one = exactOf(first.highest)
        const two = exactIn({ value: other.highest, unit: other.unit }, first.unit)
        const agrees = (low: Exact, high: Exact) => compareExact(high, times(low, exactOf('1.25'))) <= 0
        if (agrees(one, two) && agrees(two, one)) return []
        const params = {
          wrench: name,
          first: { value: first.highest, unit: first.unit },
          other: { value: other.highest, unit: other.unit },
        }
        return [{ path: `/wrenches/${id}/scales/${place + 1}`, params }]
      })
    }),
})
