import { defineRule } from '../rule.js'

/**
 * A torque wrench's scale that starts at or above its end, or whose step between marks is nothing or wider than the
 * scale: no setting could be read off it. House rule.
 */
export const scaleWrong = defineRule({
  code: 'toolbox/scale-wrong',
  severity: 'error',
  about: 'toolbox',
  check: ({ wrenches }) =>
    Object.entries(wrenches).flatMap(([id, { name, scales }]) =>
      scales.flatMap(({ lowest, highest, graduation, unit }, place) =>
        lowest < highest && graduation > 0 && graduation <= highest - lowest
          ? []
          : [
              {
                path: `/wrenches/${id}/scales/${place}`,
                params: { wrench: name, lowest, highest, graduation, unit },
              },
            ],
      ),
    ),
})
