import { readStatedRange } from '../lookup/statedValues.js'
import { sealRule } from '../ruleMakers.js'

/**
 * A liquid gasket that may touch oil at once. Some may, but if the manual does not say so, write `not
 * stated`.
 * Judges: Every liquid gasket, including overrides. Finds a stated `cureBeforeOil` whose highest figure is
 * zero.
 * Place: `<seal>/cureBeforeOil`
 * Params: part: the name of the part (see terms)
 * Harm: job
 * House rule. Information only.
 */
export const rule = sealRule('seal/cure-of-zero', 'info', ({ path, seal, on }) => {
  if (seal.kind !== 'liquid gasket' || seal.cureBeforeOil.kind === 'not stated') return []
  if (readStatedRange(seal.cureBeforeOil, 'min')?.high !== 0) return []
  return [{ path: `${path}/cureBeforeOil`, params: { part: on.name } }]
})
