import { chooseSide, compareExact, exactIn, exactOf, multiply, readBand } from '../../quantity/index.js'
import { hasFigure, pickFirstPrinted } from '../lookup/printedValues.js'
import { recordedTighteningRule } from '../ruleMakers.js'

/**
 * A torque set outside the band that the sheet states for this machine. Far too much stretches the bolt or
 * strips the thread: remove the part, inspect the thread, and tighten it again with a new washer. With far
 * too little the part comes loose.
 * Judges: Every recorded `torque set` whose part has a stated torque for this machine. Uses the first printed
 * figures, converted exactly. Finds a torque outside stated limits or tolerance (ends included), beyond a
 * single limit, or more than a tenth off a nominal without tolerance. It is a warning from half the lower end
 * up to the lower end, and up to a tenth above the upper end; else an error. The ends of a nominal without
 * tolerance are a tenth below and above it; above its upper end it is always an error.
 * Place: `<tightening>/torque`
 * Params: part: the name of the part (see terms); set: the torque as recorded; stated: the torque as first
 * printed; side: `below` or `above` the band
 * Harm: machine
 * House rule. The tenth is the assembly tolerance of an engine maker's works standard (MTN 5183-1, from a
 * secondary source). The half is our own estimate.
 */
export const rule = recordedTighteningRule(
  'record/torque-outside-band',
  'error',
  ({ path, done, part, required }) => {
    if (done.kind !== 'torque set' || required?.kind !== 'torque' || !hasFigure(required.torque)) return []
    const recordedTorque = exactIn(done.torque, 'N.m')
    const stated = readBand(required.torque, 'N.m')
    const isNominal = stated.basis === 'nominal'
    const band = isNominal ? readBand(required.torque, 'N.m', 10) : stated
    const side = chooseSide(recordedTorque, band)
    if (side === 0) return []
    const isFarBelow =
      band.low !== undefined && compareExact(multiply(recordedTorque, exactOf(2)), band.low) < 0
    const isFarAbove =
      band.high !== undefined &&
      (isNominal || compareExact(multiply(recordedTorque, exactOf(10)), multiply(band.high, exactOf(11))) > 0)
    const params = {
      part,
      set: { ...done.torque },
      stated: pickFirstPrinted(required.torque),
      side: side < 0 ? ('below' as const) : ('above' as const),
    }
    const severity = (side < 0 ? isFarBelow : isFarAbove) ? 'error' : 'warning'
    return [{ path: `${path}/torque`, params, severity }]
  },
)
