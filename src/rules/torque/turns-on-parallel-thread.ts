import { parseThread } from '../../thread/index.js'
import { tighteningRule } from '../ruleMakers.js'

/**
 * A plug with a parallel thread tightened by turns past finger tight. Turns are for taper threads, which seal
 * by wedging. A parallel plug stops on its washer after a fraction of a turn; two more turns would strip it.
 * Judges: Every tightening of an opening, including overrides. Finds `turns` if the thread can be read and is
 * not taper.
 * Place: the tightening
 * Params: part: the name of the part (see terms); thread: its usual form (see terms)
 * Harm: machine
 * Common practice, no source.
 */
export const rule = tighteningRule('torque/turns-on-parallel-thread', 'error', ({ path, tightening, on }) => {
  if (tightening.kind !== 'turns' || on.kind !== 'opening' || on.part.thread === undefined) return []
  const thread = parseThread(on.part.thread)
  if (!thread.ok || thread.value.form === 'taper') return []
  return [{ path, params: { part: on.name, thread: thread.value.designation } }]
})
