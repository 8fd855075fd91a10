import { findCalendarMonths } from '../lookup/intervals.js'
import { intervalRule } from '../ruleMakers.js'

/**
 * An interval longer than gear oil lasts in any small machine: 2500 h instead of 250 h. The change comes
 * years too late.
 * Judges: Every stated interval with hours, including overrides. Finds hours above 2000, with or without a
 * distance or period, except those that `spec/period-as-hours` reports.
 * Place: `<interval>/hours`
 * Params: hours: as printed
 * Harm: machine
 * Common practice, no source: such changes are due every 100 to 1500 h. The limit of 2000 h is our own estimate.
 */
export const rule = intervalRule('spec/implausible-hours', 'warning', ({ interval, path }) => {
  const { hours } = interval
  if (hours === undefined || Number(hours) <= MAX_HOURS || findCalendarMonths(Number(hours)) !== undefined)
    return []
  return [{ path: `${path}/hours`, params: { hours } }]
})

const MAX_HOURS = 2000
