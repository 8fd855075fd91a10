import { findLeaves } from '../../spec/index.js'
import { defineRule } from '../rule.js'

/**
 * An interval with neither hours, distance nor period: the service would never be due. Where the manual gives
 * no interval, it is `not stated`. House rule.
 */
export const intervalEmpty = defineRule({
  code: 'spec/interval-empty',
  severity: 'error',
  about: 'spec-sheet',
  check: (sheet) =>
    findLeaves(sheet)
      .filter(
        ({ leaf }) =>
          leaf.kind === 'interval' &&
          leaf.hours === undefined &&
          leaf.distance === undefined &&
          leaf.period === undefined,
      )
      .map(({ path }) => ({ path, params: {} })),
})
