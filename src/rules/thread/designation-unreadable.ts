import { parseThread } from '../../thread/index.js'
import { findFastening } from '../lookup/fastenings.js'
import { partRule } from '../ruleMakers.js'

/**
 * A thread designation that cannot be read, such as BSP without its form or a size that does not exist. The
 * washer and the torque cannot be checked against it. Write the designation as the thread standards do.
 * Judges: `thread` of every opening, of the bolts of every cover and of the fasteners of every shield. Finds one that
 * is not a designation of ISO metric, inch (UN), pipe or NPT threads.
 * Place: `<opening>/thread`, `<cover>/bolts/thread` or `<shield>/fasteners/thread`
 * Params: thread: the first 64 characters as written; part: the name of the part (see terms); because: code
 * and params of the reason
 * Harm: job
 * House rule.
 */
export const rule = partRule('thread/designation-unreadable', 'warning', (at) => {
  const { path, fastening } = findFastening(at)
  const { thread } = fastening
  const parsed = thread === undefined ? undefined : parseThread(thread)
  if (thread === undefined || parsed === undefined || parsed.ok) return []
  const [parseFinding] = parsed.findings
  const because = parseFinding === undefined ? null : { code: parseFinding.code, params: parseFinding.params }
  const params = { thread: thread.slice(0, 64), part: at.name, because }
  return [{ path: `${path}/thread`, params }]
})
