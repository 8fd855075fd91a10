import { isPlausibleScale } from '../lookup/isPlausibleScale.js'
import { wrenchRule } from '../ruleMakers.js'

/**
 * A scale of a torque wrench that starts at or above its end, or whose step between marks is zero or wider
 * than the scale. No setting could be read from it.
 * Judges: Every scale of every wrench. Finds `lowest` at or above `highest`, `graduation` of zero or less or above
 * `highest` − `lowest`, or `highest` above 10⁹.
 * Place: `/wrenches/<id>/scales/<place>`
 * Params: wrench: its name; lowest: as written; highest: as written; graduation: as written; unit: as written
 * Harm: job
 * House rule.
 */
export const rule = wrenchRule('toolbox/scale-wrong', 'error', ([id, { name, scales }]) =>
  scales.flatMap((scale, place) => {
    if (isPlausibleScale(scale)) return []
    const { lowest, highest, graduation, unit } = scale
    const params = { wrench: name, lowest, highest, graduation, unit }
    return [{ path: `/wrenches/${id}/scales/${place}`, params }]
  }),
)
