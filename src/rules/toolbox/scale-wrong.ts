import { isReadableScale } from '../lookup/isReadableScale.js'
import { defineRule } from '../rule.js'

/**
 * A torque wrench's scale that starts at or above its end, or whose step between marks is nothing or wider
 * than the scale: no setting could be read off it. House rule.
 */
export const scaleWrong = defineRule({
  code: 'toolbox/scale-wrong',
  severity: 'error',
  about: 'toolbox',
  check: ({ document: { wrenches } }) =>
    Object.entries(wrenches).flatMap(([id, { name, scales }]) =>
      scales.flatMap((scale, place) => {
        if (isReadableScale(scale)) return []
        const { lowest, highest, graduation, unit } = scale
        const params = { wrench: name, lowest, highest, graduation, unit }
        return [{ path: `/wrenches/${id}/scales/${place}`, params }]
      }),
    ),
})
