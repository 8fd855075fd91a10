import { compareQuantities } from '../../quantity/index.js'
import { containerRule } from '../ruleMakers.js'

/**
 * An opened container with more oil than its size. Full containers were included, or the unit is wrong. The
 * plan would count on missing oil.
 * Judges: Every container with `opened`. Finds `opened` above `size`, converted exactly; equal volumes are
 * allowed, since it may just have been opened.
 * Place: `/containers/<id>/opened`
 * Params: container: its name; opened: as written; size: as written
 * Harm: job
 * House rule.
 */
export const rule = containerRule('stock/opened-larger-than-size', 'error', ([id, { name, size, opened }]) =>
  opened === undefined || compareQuantities(opened, size) <= 0
    ? []
    : [{ path: `/containers/${id}/opened`, params: { container: name, opened, size } }],
)
