import { dayNumberOf } from '../../calendar/index.js'
import { type CountedMeterReading, readMeters } from '../../interval/index.js'
import { logRule } from '../ruleMakers.js'

/**
 * Hours and distance of a log that mean a speed that such a machine cannot have, between two days on which both
 * meters were read: one of the two readings is mistyped, or miles were entered as kilometres.
 * Judges: Readings of both meters on one date, in the order of the dates, each meter as its total (events included).
 * Judges each date against the one before, where neither meter has a break between them: distance in km ÷ hours
 * worked. Finds a speed above 130 km/h over at least five hours.
 * Place: the later distance reading
 * Params: speed: in km/h; fastest: 130; from: the earlier date; to: the later date
 * Harm: job
 * House rule.
 */
export const rule = logRule('interval/log-speed', 'warning', ({ document: log }) => {
  const { hours = [], distance = [] } = readMeters(log)
  const both = hours.flatMap((reading) => {
    const other = distance.find(({ date }) => date === reading.date)
    return other === undefined ? [] : [{ hours: reading, distance: other }]
  })
  return both.flatMap((later, index) => {
    const earlier = both[index - 1]
    if (earlier === undefined || dayNumberOf(earlier.hours.date) >= dayNumberOf(later.hours.date)) return []
    if (earlier.hours.stretch !== later.hours.stretch || earlier.distance.stretch !== later.distance.stretch)
      return []
    const worked = later.hours.total.value - earlier.hours.total.value
    const speed = (kilometres(later.distance) - kilometres(earlier.distance)) / worked
    if (worked < 5 || speed <= MAX_SPEED) return []
    const params = { speed, fastest: MAX_SPEED, from: earlier.hours.date, to: later.hours.date }
    return [{ path: later.distance.path, params }]
  })
})

const MAX_SPEED = 130

function kilometres({ total: { value, unit } }: CountedMeterReading): number {
  return unit === 'mi' ? value * 1.609344 : value
}
