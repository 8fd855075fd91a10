import { checkWasherFit } from '../../seal/index.js'
import { sealRule } from '../ruleMakers.js'

/**
 * A sealing washer whose hole is smaller than its plug's thread or much wider, or any washer on a taper
 * thread. It was copied from the wrong line of the parts list, and the plug would weep. Sizes may differ by
 * their printed rounding. The hole of a ring held in an undercut of the plug may be up to 4 mm smaller.
 * Judges: Every crush washer and bonded seal of an opening with a thread, including overrides, by the
 * judgement of `checkWasherFit`. An unusual rim or thickness is a warning.
 * Place: `<seal>/size`; the seal itself if it has no size
 * Params: part: name of the opening; reason: code and params of the judgement
 * Harm: job
 * Source: DIN 7603 rows from a secondary source, and the house rules of `checkWasherFit`.
 */
export const rule = sealRule('seal/washer-does-not-fit', 'error', ({ path, seal, on }) => {
  if (on.kind !== 'opening' || on.part.thread === undefined) return []
  if (seal.kind !== 'crush washer' && seal.kind !== 'bonded seal') return []
  const { verdict, reasons } = checkWasherFit(on.part.thread, seal.size, seal.form)
  const [reason] = reasons
  if ((verdict !== 'does not fit' && verdict !== 'doubtful') || reason === undefined) return []
  const at = seal.size === undefined ? path : `${path}/size`
  const params = { part: on.name, reason: { ...reason } }
  return [{ path: at, params, ...(verdict === 'doubtful' ? { severity: 'warning' as const } : {}) }]
})
