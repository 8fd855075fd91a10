import { findCalendarMonths } from '../lookup/intervals.js'
import { sheetRule } from '../ruleMakers.js'

/**
 * A period of months entered as hours: either the number of months (an oil change every 6 hours of work), or
 * the calendar hours (4380 for half a year), which take years on an hour meter.
 * Judges: Every stated interval with hours and no period, including overrides. For the `repeat` of a service
 * with the task `change`, finds hours of at most 12. Otherwise finds hours equal to count × 720, 730, 730.5,
 * 732 or 744 for a count of 1, 2, 3, 4, 6, 9, 12, 18, 24, 36, 48 or 60. The smallest count that fits is used.
 * Place: `<interval>/hours`
 * Params: hours: as printed; months: the hours if they are 12 or fewer and this is such a `repeat`, else the count
 * that fits
 * Harm: job
 * House rule.
 */
export const rule = sheetRule('spec/period-as-hours', 'warning', ({ document, sheet }) => {
  const repeatIntervals = Object.entries(document.services)
    .filter(([, { task }]) => task === 'change')
    .map(([id]) => `/services/${id}/intervals/repeat`)
  return sheet.intervals.flatMap(({ interval, path, place }) => {
    if (interval.hours === undefined || interval.period !== undefined) return []
    const hours = Number(interval.hours)
    const months = hours <= 12 && repeatIntervals.includes(place) ? hours : findCalendarMonths(hours)
    return months === undefined ? [] : [{ path: `${path}/hours`, params: { hours: interval.hours, months } }]
  })
})
