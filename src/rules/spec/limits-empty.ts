import { defineRule } from '../rule.js'

/**
 * Limits with neither a least nor a greatest figure: a band that holds everything says nothing. Where the
 * manual gives no figure, the value is `not stated`. House rule.
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
