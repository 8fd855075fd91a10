import { recordRule } from '../ruleMakers.js'

/**
 * A record without the reading of a meter that the machine has: the next service by that meter cannot be counted from
 * this one.
 * Judges: Each meter of the log, `hours` then `distance`. Finds one without a reading in the record. Not judged
 * without the log.
 * Place: `/readings`
 * Params: meter: `hours` or `distance`
 * Harm: record
 * House rule.
 */
export const rule = recordRule('record/reading-missing', 'warning', ({ document: { readings }, log }) => {
  const meters = log?.meters
  if (meters === undefined) return []
  return (['hours', 'distance'] as const)
    .filter((meter) => meters[meter] !== undefined && readings[meter] === undefined)
    .map((meter) => ({ path: '/readings', params: { meter } }))
})
