import { defineRule } from '../rule.js'

/**
 * An interval with neither hours, distance nor period: the service would never be due. Where the manual gives no
 * interval, it is `not stated`.
 * Judges: Every stated interval, overrides included. Finds one without all three.
 * Place: the interval
 * House rule.
 */
export const intervalEmpty = defineRule({
  code: 'spec/interval-empty',
  severity: 'error',
  about: 'spec-sheet',
  check: ({ sheet }) =>
    sheet.intervals
      .filter(({ interval: { hours, distance, period } }) => (hours ?? distance ?? period) === undefined)
      .map(({ path }) => ({ path, params: {} })),
})
