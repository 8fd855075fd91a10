import { dayNumberOf } from '../../calendar/index.js'
import { type CountedMeterReading, readMeters } from '../../interval/index.js'
import { logRule } from '../ruleMakers.js'

/**
 * Readings of both meters on two days that imply an impossible speed between them. A reading is mistyped, or
 * miles were entered as kilometres.
 * Judges: Dates with readings of both meters, in order, each meter as its total (events included). Compares
 * each date with the one before, if neither meter has a break between them: speed = distance in km ÷ hours
 * worked. Finds a speed above 130 km/h over at least five hours.
 * Place: the later distance reading
 * Params: speed: in km/h; fastest: 130; from: the earlier date; to: the later date
 * Harm: job
 * House rule.
 */
export const rule = logRule('interval/log-speed', 'warning', ({ document: log }) => {
  const { hours = [], distance = [] } = readMeters(log)
  const readingPairs = hours.flatMap((reading) => {
    const distanceReading = distance.find(({ date }) => date === reading.date)
    return distanceReading === undefined ? [] : [{ hours: reading, distance: distanceReading }]
  })
  return readingPairs.flatMap((pair, index) => {
    const previous = readingPairs[index - 1]
    if (previous === undefined || dayNumberOf(previous.hours.date) >= dayNumberOf(pair.hours.date)) return []
    if (previous.hours.stretch !== pair.hours.stretch || previous.distance.stretch !== pair.distance.stretch)
      return []
    const hoursWorked = pair.hours.total.value - previous.hours.total.value
    const speed = (toKilometres(pair.distance) - toKilometres(previous.distance)) / hoursWorked
    if (hoursWorked < 5 || speed <= MAX_SPEED) return []
    const params = { speed, fastest: MAX_SPEED, from: previous.hours.date, to: pair.hours.date }
    return [{ path: pair.distance.path, params }]
  })
})

const MAX_SPEED = 130

function toKilometres({ total: { value, unit } }: CountedMeterReading): number {
  return unit === 'mi' ? value * 1.609344 : value
}
