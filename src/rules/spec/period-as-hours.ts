import { defineRule } from '../rule.js'

/**
 * A period of months that was written down as hours: either the bare number of months (an oil change every 6
 * hours of work), or the months turned into hours of the calendar (4380 for half a year), which an hour meter
 * needs years to count. Only an interval without a period of its own is judged. House rule: a calendar month
 * is taken as 720, 730, 730.5, 732 or 744 h, and a repeated oil change at most every 12 h of work is not
 * believed.
 */
export const periodAsHours = defineRule({
  code: 'spec/period-as-hours',
  severity: 'warning',
  about: 'spec-sheet',
  check: ({ document, sheet }) => {
    const repeats = Object.entries(document.services)
      .filter(([, { task }]) => task === 'change')
      .map(([id]) => `/services/${id}/intervals/repeat`)
    return sheet.intervals.flatMap(({ interval, path, place }) => {
      if (interval.hours === undefined || interval.period !== undefined) return []
      const hours = Number(interval.hours)
      const months =
        hours <= 12 && repeats.includes(place)
          ? hours
          : MONTHS.find((count) => HOURS_OF_A_MONTH.some((month) => hours === count * month))
      return months === undefined
        ? []
        : [{ path: `${path}/hours`, params: { hours: interval.hours, months } }]
    })
  },
})

const HOURS_OF_A_MONTH = [720, 730, 730.5, 732, 744]
const MONTHS = [1, 2, 3, 4, 6, 9, 12, 18, 24, 36, 48, 60]
