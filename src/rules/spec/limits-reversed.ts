import { compareFigures } from '../../quantity/index.js'
import { makeSwapFixes } from '../lookup/makeSwapFixes.js'
import { figureRule } from '../ruleMakers.js'

/**
 * Limits whose minimum exceeds the maximum. No torque, quantity or temperature could be between them. The
 * figures were swapped, or one has a wrong digit.
 * Judges: Every printed value of kind `limits` with both figures, including those in `printed` and in
 * overrides. Compares them as exact decimals; equal figures are allowed.
 * Place: the value
 * Params: min: as printed; max: as printed; unit: as written
 * Harm: machine
 * House rule.
 */
export const rule = figureRule('spec/limits-reversed', 'error', ({ path, figure }) => {
  if (figure.kind !== 'limits') return []
  const { min, max, unit } = figure
  if (min === undefined || max === undefined || compareFigures(min, max) <= 0) return []
  const fixes = makeSwapFixes(path, ['min', min], ['max', max])
  return [{ path, params: { min, max, unit }, cures: fixes }]
})
