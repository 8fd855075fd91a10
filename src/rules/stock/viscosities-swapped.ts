import { compareQuantities } from '../../quantity/index.js'
import { makeSwapFixes } from '../lookup/makeSwapFixes.js'
import { containerRule } from '../ruleMakers.js'

/**
 * An oil as thick at 100 °C as at 40 °C, or thicker. The two figures of the data sheet were swapped: every
 * oil thins as it warms.
 * Judges: Every container whose oil has both figures. Finds `kv100` at or above `kv40`.
 * Place: `/containers/<id>/oil`
 * Params: container: its name; kv40: as written; kv100: as written
 * Harm: job
 * Common practice, no source.
 */
export const rule = containerRule('stock/viscosities-swapped', 'error', ([id, { name, oil }]) => {
  const { kv40, kv100 } = oil
  if (kv40 === undefined || kv100 === undefined || compareQuantities(kv100, kv40) < 0) return []
  const path = `/containers/${id}/oil`
  const fixes = makeSwapFixes(path, ['kv40', kv40], ['kv100', kv100])
  return [{ path, params: { container: name, kv40, kv100 }, cures: fixes }]
})
