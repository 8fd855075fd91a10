import { compareFigures, measureOf } from '../../quantity/index.js'
import { figureRule } from '../ruleMakers.js'

/**
 * A tolerance as large as the value or larger, such as 45 ± 45 mL. The band would reach down to zero. A
 * decimal point was lost, or the tolerance was copied from the wrong line. Temperatures are not judged: their
 * zero is arbitrary.
 * Judges: Every printed value of kind `nominal with tolerance` except temperatures, including those in
 * `printed` and in overrides. Finds `minus`, else `plus`, at or above `value`, as exact decimals.
 * Place: `<value>/minus` or `<value>/plus`
 * Params: value: as printed; minus: as printed; plus: as printed; unit: as written
 * Harm: machine
 * Common practice, no source.
 */
export const rule = figureRule('spec/tolerance-too-large', 'error', ({ path, figure }) => {
  if (figure.kind !== 'nominal with tolerance' || measureOf(figure.unit) === 'temperature') return []
  const { value, minus, plus, unit } = figure
  const side = (['minus', 'plus'] as const).find((end) => compareFigures(figure[end], value) >= 0)
  return side === undefined ? [] : [{ path: `${path}/${side}`, params: { value, minus, plus, unit } }]
})
