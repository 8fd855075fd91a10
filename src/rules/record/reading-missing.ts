import { defineRule } from '../rule.js'

/**
 * A record without the reading of a meter that the machine has: the next service by that meter cannot be
 * counted from this one. Needs the machine's log in the set. House rule; one finding for each meter.
 */
export const readingMissing = defineRule({
  code: 'record/reading-missing',
  severity: 'warning',
  about: 'service-record',
  check: ({ document: { readings }, log }) => {
    const meters = log?.meters
    if (meters === undefined) return []
    return (['hours', 'distance'] as const)
      .filter((meter) => meters[meter] !== undefined && readings[meter] === undefined)
      .map((meter) => ({ path: '/readings', params: { meter } }))
  },
})
