import { recordedTighteningRule } from '../ruleMakers.js'

/**
 * A plug recorded as tightened by turns although the sheet states a torque, or the other way round. The wrong
 * method does not seal that thread.
 * Judges: Every recorded tightening of a part with a stated tightening for this machine. Finds `turns`
 * against a torque, or `torque set` against turns; other kinds are allowed.
 * Place: `<tightening>/kind`
 * Params: part: the name of the part (see terms); done: `turns` or `torque set`; required: `turns` or `torque`
 * Harm: machine
 * House rule.
 */
export const rule = recordedTighteningRule(
  'record/tightening-method-differs',
  'error',
  ({ path, done, part, required }) => {
    if (required === undefined || (done.kind !== 'turns' && done.kind !== 'torque set')) return []
    if ((done.kind === 'turns') === (required.kind === 'turns')) return []
    return [{ path: `${path}/kind`, params: { part, done: done.kind, required: required.kind } }]
  },
)
