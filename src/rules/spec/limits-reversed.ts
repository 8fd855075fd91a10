import { compareFigures } from '../../quantity/index.js'
import { defineRule } from '../rule.js'

/**
 * Limits whose least figure is above the greatest: no torque, quantity or temperature could lie between them.
 * House rule: the two figures changed places, or one has a slipped digit.
 */
export const limitsReversed = defineRule({
  code: 'spec/limits-reversed',
  severity: 'error',
  about: 'spec-sheet',
  check: ({ sheet }) =>
    sheet.figures.flatMap(({ path, figure }) => {
      if (figure.kind !== 'limits') return []
      const { min, max, unit } = figure
      if (min === undefined || max === undefined || compareFigures(min, max) <= 0) return []
      const cures = [
        { op: 'replace' as const, path: `${path}/min`, value: max },
        { op: 'replace' as const, path: `${path}/max`, value: min },
      ]
      return [{ path, params: { min, max, unit }, cures }]
    }),
})
