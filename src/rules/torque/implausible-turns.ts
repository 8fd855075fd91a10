import { tighteningRule } from '../ruleMakers.js'

/**
 * More turns past finger tight than a taper thread has: the plug would split its housing. A decimal point was lost.
 * Judges: Every tightening by turns, overrides included. Finds any whose `max`, or `min` if there is no maximum, is
 * above 5. Not judged if the minimum exceeds the maximum (`torque/turns-reversed`).
 * Place: `<tightening>/max`, or `<tightening>/min`
 * Params: part: the name of the part (see terms); turns: as written
 * Harm: machine
 * Common practice, no source: taper plugs get one and a half to three turns past finger tight; the limit of 5 is our
 * own estimate.
 */
export const rule = tighteningRule('torque/implausible-turns', 'warning', ({ path, tightening, on }) => {
  if (tightening.kind !== 'turns') return []
  const { min, max } = tightening
  if (Number(max ?? min) <= MAX_TURNS || (max !== undefined && Number(min) > Number(max))) return []
  const at = `${path}/${max === undefined ? 'min' : 'max'}`
  return [{ path: at, params: { part: on.name, turns: max ?? min } }]
})

const MAX_TURNS = 5
