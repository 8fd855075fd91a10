import { compareQuantities } from '../../quantity/index.js'
import { toolboxRule } from '../ruleMakers.js'

/**
 * A measuring vessel whose marks are further apart than its size, or whose lowest mark is above its size.
 * Size and graduation, or their units, were swapped.
 * Judges: Every vessel. Finds `graduation`, else `lowestMark`, above `size`, converted exactly; equal volumes
 * are allowed.
 * Place: `/vessels/<id>/graduation` or `/vessels/<id>/lowestMark`
 * Params: vessel: its name; size: as written; mark: the graduation or lowest mark as written
 * Harm: job
 * House rule.
 */
export const rule = toolboxRule('toolbox/vessel-graduation', 'error', ({ document: { vessels } }) =>
  Object.entries(vessels).flatMap(([id, vessel]) => {
    const oversizedMark = (['graduation', 'lowestMark'] as const).find((mark) => {
      const quantity = vessel[mark]
      return quantity !== undefined && compareQuantities(quantity, vessel.size) > 0
    })
    if (oversizedMark === undefined) return []
    const params = { vessel: vessel.name, size: vessel.size, mark: vessel[oversizedMark] }
    return [{ path: `/vessels/${id}/${oversizedMark}`, params }]
  }),
)
