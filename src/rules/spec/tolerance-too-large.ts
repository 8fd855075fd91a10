import { compareFigures, measureOf } from '../../quantity/index.js'
import { defineRule } from '../rule.js'

/**
 * A tolerance as large as the value itself or larger, such as 45 ± 45 mL: the band would reach down to
 * nothing. A decimal mark was lost, or the tolerance was read from another line. Temperatures are left out,
 * since their zero is arbitrary. Common practice, no source.
 */
export const toleranceTooLarge = defineRule({
  code: 'spec/tolerance-too-large',
  severity: 'error',
  about: 'spec-sheet',
  check: ({ sheet }) =>
    sheet.figures.flatMap(({ path, figure }) => {
      if (figure.kind !== 'nominal with tolerance' || measureOf(figure.unit) === 'temperature') return []
      const { value, minus, plus, unit } = figure
      const side = (['minus', 'plus'] as const).find((end) => compareFigures(figure[end], value) >= 0)
      return side === undefined ? [] : [{ path: `${path}/${side}`, params: { value, minus, plus, unit } }]
    }),
})
