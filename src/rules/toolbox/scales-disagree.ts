import { amountIn } from '../../quantity/index.js'
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
  check: ({ wrenches }) =>
    Object.entries(wrenches).flatMap(([id, { name, scales }]) => {
      const [first, ...others] = scales
      if (first === undefined) return []
      return others.flatMap((other, place) => {
        const highest = amountIn({ value: other.highest, unit: other.unit }, first.unit).value
        if (highest <= first.highest * 1.25 && first.highest <= highest * 1.25) return []
        const params = {
          wrench: name,
          first: { value: first.highest, unit: first.unit },
          other: { value: other.highest, unit: other.unit },
        }
        return [{ path: `/wrenches/${id}/scales/${place + 1}`, params }]
      })
    }),
})
