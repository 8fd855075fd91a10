import { dayNumberOf } from '../../calendar/index.js'
import { type MeterReadingCounted, readMeters } from '../../interval/index.js'
import { defineRule } from '../rule.js'

/**
 * Hours and distance of a log that together imply a speed no such machine keeps between two days on which both meters were
 * read: one of the two readings is mistyped, or miles stand for kilometres. House rule: at most 130 km/h on average, over
 * at least five hours.
 */
export const logSpeed = defineRule({
  code: 'interval/log-speed',
  severity: 'warning',
  about: 'machine-log',
  check: ({ document: log }) => {
    const { hours = [], distance = [] } = readMeters(log)
    const both = hours.flatMap((reading) => {
      const other = distance.find(({ date }) => date === reading.date)
      return other === undefined ? [] : [{ hours: reading, distance: other }]
    })
    return both.flatMap((later, index) => {
      const earlier = both[index - 1]
      if (earlier === undefined || dayNumberOf(earlier.hours.date) >= dayNumberOf(later.hours.date)) return []
      if (
        earlier.hours.stretch !== later.hours.stretch ||
        earlier.distance.stretch !== later.distance.stretch
      )
        return []
      const worked = later.hours.total.value - earlier.hours.total.value
      const speed = (kilometres(later.distance) - kilometres(earlier.distance)) / worked
      return worked >= 5 && speed > FASTEST
        ? [
            {
              path: later.distance.path,
              params: { speed, fastest: FASTEST, from: earlier.hours.date, to: later.hours.date },
            },
          ]
        : []
    })
  },
})

const FASTEST = 130

function kilometres({ total: { value, unit } }: MeterReadingCounted): number {
  return unit === 'mi' ? value * 1.609344 : value
}
