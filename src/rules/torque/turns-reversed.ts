import { compareFigures } from '../../quantity/index.js'
import { makeSwapFixes } from '../lookup/makeSwapFixes.js'
import { tighteningRule } from '../ruleMakers.js'

/**
 * Turns past finger tight whose minimum exceeds the maximum. The two figures were swapped.
 * Judges: Every tightening by `turns` with `max`, including overrides. Finds `min` above `max`, as exact
 * decimals; equal figures are allowed.
 * Place: the tightening
 * Params: part: the name of the part (see terms); min: as printed; max: as printed
 * Harm: machine
 * House rule.
 */
export const rule = tighteningRule('torque/turns-reversed', 'error', ({ path, tightening, on }) => {
  if (tightening.kind !== 'turns' || tightening.max === undefined) return []
  const { min, max } = tightening
  if (compareFigures(min, max) <= 0) return []
  const fixes = makeSwapFixes(path, ['min', min], ['max', max])
  return [{ path, params: { part: on.name, min, max }, cures: fixes }]
})
