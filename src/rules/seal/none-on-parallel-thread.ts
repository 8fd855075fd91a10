import { parseThread } from '../../thread/index.js'
import { partRule } from '../ruleMakers.js'

/**
 * A plug with a parallel thread and `none` as its seal. Only a taper thread seals by itself. The washer is
 * part of the plug, or the thread was misread. Waive the finding for a plug with a metal cone.
 * Judges: Every opening whose thread can be read and is not taper (see terms: thread), with at least one entry under
 * `seals`, all of them `none`. Overrides are not judged.
 * Place: `<opening>/seals`
 * Params: part: the name of the part (see terms); thread: its usual form (see terms)
 * Harm: machine
 * Common practice, no source.
 */
export const rule = partRule('seal/none-on-parallel-thread', 'warning', ({ kind, part, path, name }) => {
  if (kind !== 'opening' || part.thread === undefined || part.seals.length === 0) return []
  const thread = parseThread(part.thread)
  if (!thread.ok || thread.value.form === 'taper' || part.seals.some((seal) => seal.kind !== 'none'))
    return []
  return [{ path: `${path}/seals`, params: { part: name, thread: thread.value.designation } }]
})
