import { recordRule } from '../ruleMakers.js'

/**
 * A record without the reading of a meter that the machine has: the next service by that meter cannot be counted from
 * this one.
 * Judges: Each meter of the log, `hours` then `distance`. Finds any without a reading in the record. Not judged without
 * the log, nor in a correction: what it leaves out stays as it was recorded.
 * Place: `/readings`
 * Params: meter: `hours` or `distance`
 * Harm: record
 * House rule.
 */
export const rule = recordRule(
  'record/reading-missing',
  'warning',
  ({ document: { readings, corrects }, log }) => {
    const meters = log?.meters
    if (meters === undefined || corrects !== undefined) return []
    return (['hours', 'distance'] as const)
      .filter((meter) => meters[meter] !== undefined && readings[meter] === undefined)
      .map((meter) => ({ path: '/readings', params: { meter } }))
  },
)
