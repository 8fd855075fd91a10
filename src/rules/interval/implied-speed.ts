import { readComparableLimits } from '../lookup/readComparableLimits.js'
import { intervalRule } from '../ruleMakers.js'

/**
 * An interval whose hours and distance mean an average speed that such a machine cannot have: one has a zero too
 * many, or miles and kilometres were confused.
 * Judges: Every stated interval, overrides included, with hours and distance, both above zero by their comparable
 * sizes: speed = distance in km ÷ hours. Finds a speed below 1 km/h or above 80 km/h.
 * Place: `<interval>/distance`
 * Params: speed: in km/h; slowest: 1; fastest: 80
 * Harm: job
 * House rule: from 1 to 80 km/h over a whole interval is plausible, both ends included.
 */
export const rule = intervalRule('interval/implied-speed', 'warning', ({ interval, path }) => {
  const { hours = 0, distance = 0 } = readComparableLimits(interval)
  const speed = distance / hours
  if (hours === 0 || distance === 0 || (speed >= MIN_SPEED && speed <= MAX_SPEED)) return []
  return [{ path: `${path}/distance`, params: { speed, slowest: MIN_SPEED, fastest: MAX_SPEED } }]
})

const MIN_SPEED = 1
const MAX_SPEED = 80
