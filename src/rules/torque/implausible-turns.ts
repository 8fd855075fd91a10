import { tighteningRule } from '../ruleMakers.js'

/**
 * More turns past finger tight than a taper thread has. The plug would split its housing. A decimal point was
 * lost.
 * Judges: Every tightening by turns, including overrides. Finds a `max`, or a `min` without `max`, above 5.
 * Skipped if the minimum exceeds the maximum (`torque/turns-reversed`).
 * Place: `<tightening>/max`, or `<tightening>/min`
 * Params: part: the name of the part (see terms); turns: as written
 * Harm: machine
 * Common practice, no source: taper plugs are turned one and a half to three turns past finger tight. The
 * limit of 5 is our own estimate.
 */
export const rule = tighteningRule('torque/implausible-turns', 'warning', ({ path, tightening, on }) => {
  if (tightening.kind !== 'turns') return []
  const { min, max } = tightening
  if (Number(max ?? min) <= MAX_TURNS || (max !== undefined && Number(min) > Number(max))) return []
  const at = `${path}/${max === undefined ? 'min' : 'max'}`
  return [{ path: at, params: { part: on.name, turns: max ?? min } }]
})

const MAX_TURNS = 5
