import { compareQuantities } from '../../quantity/index.js'
import { defineRule } from '../rule.js'

/**
 * An opened container said to hold more than it can: counted with the full ones, or in another unit. The oil
 * would be planned and not be there. House rule; a container just opened may still be full.
 */
export const openedLargerThanSize = defineRule({
  code: 'stock/opened-larger-than-size',
  severity: 'error',
  about: 'stock',
  check: ({ document: { containers } }) =>
    Object.entries(containers).flatMap(([id, { name, size, opened }]) =>
      opened === undefined || compareQuantities(opened, size) <= 0
        ? []
        : [{ path: `/containers/${id}/opened`, params: { container: name, opened, size } }],
    ),
})
