import { recordedTighteningRule } from '../ruleMakers.js'

/**
 * A plug whose torque was not measured: finger tight, tightened with a key alone, not checked, or not known.
 * A finger-tight plug comes loose and lets the oil out.
 * Judges: Every recorded tightening of the kind `by hand`, `without a wrench`, `not checked` or `not known`.
 * Finds each of them, except `by hand` on a part whose drive is `hand`. `without a wrench` is a warning,
 * since the part is tight; the others are errors.
 * Place: `<tightening>/kind`
 * Params: part: the name of the part (see terms); done: the kind as written
 * Harm: machine
 * Common practice, no source.
 */
export const rule = recordedTighteningRule(
  'record/tightening-not-measured',
  'error',
  ({ path, done: { kind }, part, isHandTurned }) => {
    if (kind === 'torque set' || kind === 'turns' || kind === 'by the manual') return []
    if (kind === 'by hand' && isHandTurned) return []
    const severity = kind === 'without a wrench' ? 'warning' : 'error'
    return [{ path: `${path}/kind`, params: { part, done: kind }, severity }]
  },
)
