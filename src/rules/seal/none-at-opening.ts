import { parseThread } from '../../thread/index.js'
import { partRule } from '../ruleMakers.js'

/**
 * An opening without any entry under `seals`. The washer was forgotten, no seal would be bought, and the plug
 * would weep. If the manual shows that there is no seal, write `none`; if it says nothing, write `not
 * stated`.
 * Judges: Every opening with an empty list of `seals`. It is a warning for a taper thread, which may need no
 * sealant.
 * Place: `<opening>/seals`
 * Params: part: the name of the part (see terms)
 * Harm: machine
 * Common practice, no source.
 */
export const rule = partRule('seal/none-at-opening', 'error', ({ kind, part, path, name }) => {
  if (kind !== 'opening' || part.seals.length > 0) return []
  const thread = part.thread === undefined ? undefined : parseThread(part.thread)
  const severity = thread?.ok === true && thread.value.form === 'taper' ? 'warning' : 'error'
  return [{ path: `${path}/seals`, params: { part: name }, severity }]
})
