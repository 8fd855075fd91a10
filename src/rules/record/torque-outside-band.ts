import { exactIn, readBand, sideOfBand } from '../../quantity/index.js'
import { firstPrinted } from '../lookup/firstPrinted.js'
import { hasFigure } from '../lookup/hasFigure.js'
import { tightenedRule } from '../ruleMakers.js'

/**
 * A torque set outside the band that the sheet states for this machine. Slacken the plug, give it a new washer, and
 * set it again.
 * Judges: Every recorded `torque set` whose part has a stated torque for this machine. The first printed figures
 * count, converted exactly. Finds a torque outside stated limits or tolerance (the ends belong to the band), beyond a
 * single limit, or more than a tenth off a nominal without tolerance. One below such a nominal is a warning, since
 * too little torque only makes the plug weep, and too much strips the thread.
 * Place: `<tightening>/torque`
 * Params: part: the name of the part (see terms); set: the torque as recorded; stated: the torque as printed first
 * Harm: machine
 * House rule; the tenth is the assembly tolerance of an engine maker's works standard (MTN 5183-1, from a secondary
 * source).
 */
export const rule = tightenedRule('record/torque-outside-band', 'error', ({ path, done, part, required }) => {
  if (done.kind !== 'torque set' || required?.kind !== 'torque' || !hasFigure(required.torque)) return []
  const set = exactIn(done.torque, 'N.m')
  const band = readBand(required.torque, 'N.m')
  const stated = firstPrinted(required.torque)
  const params = { part, set: { ...done.torque }, stated }
  const at = `${path}/torque`
  if (band.basis !== 'nominal') return sideOfBand(set, band) === 0 ? [] : [{ path: at, params }]
  const side = sideOfBand(set, readBand(required.torque, 'N.m', 10))
  if (side === 0) return []
  return [{ path: at, params, ...(side < 0 && { severity: 'warning' as const }) }]
})
