import { readComparableLimits } from '../lookup/intervals.js'
import { intervalRule } from '../ruleMakers.js'

/**
 * An interval whose hours and distance imply an impossible average speed. One figure has an extra zero, or
 * miles and kilometres were confused.
 * Judges: Every stated interval, including overrides, whose hours and distance have comparable sizes above
 * zero. Speed = distance in km ÷ hours. Finds a speed below 1 km/h or above 80 km/h.
 * Place: `<interval>/distance`
 * Params: speed: in km/h; slowest: 1; fastest: 80
 * Harm: job
 * House rule: an average speed of 1 to 80 km/h over a whole interval is plausible.
 */
export const rule = intervalRule('interval/implied-speed', 'warning', ({ interval, path }) => {
  const { hours = 0, distance = 0 } = readComparableLimits(interval)
  const speed = distance / hours
  if (hours === 0 || distance === 0 || (speed >= MIN_SPEED && speed <= MAX_SPEED)) return []
  return [{ path: `${path}/distance`, params: { speed, slowest: MIN_SPEED, fastest: MAX_SPEED } }]
})

const MIN_SPEED = 1
const MAX_SPEED = 80
