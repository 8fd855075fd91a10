import { recordRule } from '../ruleMakers.js'

/**
 * A record without a reading of a meter that the machine has. The next service by that meter cannot be
 * counted from this record.
 * Judges: Each meter of the log, `hours` then `distance`. Finds a meter without a reading in the record.
 * Skipped without the log, and for a correction: it need not repeat unchanged readings.
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
