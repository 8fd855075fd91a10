import { tighteningRule } from '../ruleMakers.js'

/**
 * A plug with thread sealant whose torque or turns are for a dry thread. Sealant makes the thread slippery,
 * so the same torque loads it more and can strip it.
 * Judges: Every tightening of an opening, including overrides, with the thread condition `dry`. Finds a
 * tightening if its opening lists a `thread sealant` on the base sheet.
 * Place: `<tightening>/threadCondition`
 * Params: part: the name of the part (see terms)
 * Harm: machine
 * Common practice, no source.
 */
export const rule = tighteningRule('seal/sealant-on-dry-thread', 'warning', ({ path, tightening, on }) => {
  if (on.kind !== 'opening' || tightening.threadCondition !== 'dry') return []
  if (!on.part.seals.some(({ kind }) => kind === 'thread sealant')) return []
  return [{ path: `${path}/threadCondition`, params: { part: on.name } }]
})
