import { defineRule } from '../rule.js'

/**
 * Limits with neither a minimum nor a maximum: they hold every value. Where the manual gives no figure, the value is
 * `not stated`.
 * Judges: Every printed value of kind `limits`, those in `printed` and in overrides included. Finds one without `min`
 * and `max`.
 * Place: the value
 * Params: unit: as written
 * House rule.
 */
export const limitsEmpty = defineRule({
  code: 'spec/limits-empty',
  severity: 'error',
  about: 'spec-sheet',
  check: ({ sheet }) =>
    sheet.figures
      .filter(
        ({ figure }) => figure.kind === 'limits' && figure.min === undefined && figure.max === undefined,
      )
      .map(({ path, figure }) => ({ path, params: { unit: figure.unit } })),
})
