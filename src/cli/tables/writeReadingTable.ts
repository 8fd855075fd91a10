import { writeCsv } from '../../exchange/index.js'
import type { DistanceUnit } from '../../quantity/index.js'
import type { MachineLog } from '../../spec/index.js'

/** The readings of logs as a table, one machine and day a row, which `readReadingTable` reads back. */
export function writeReadingTable(logs: readonly MachineLog[]): string {
  const units = [...new Set(logs.flatMap(({ meters }) => meters.distance?.unit ?? []))]
  const rows = logs.flatMap((log) => {
    const { hours, distance } = log.meters
    const days = new Set([...(hours?.readings ?? []), ...(distance?.readings ?? [])].map(({ date }) => date))
    const hoursOf = new Map(hours?.readings.map(({ date, value }) => [date, value]))
    const distanceOf = new Map(distance?.readings.map(({ date, value }) => [date, value]))
    return [...days].sort().map((date) => {
      const showDistance = (unit: DistanceUnit) =>
        unit === distance?.unit ? distanceOf.get(date) : undefined
      return [log.id, date, hoursOf.get(date), ...units.map(showDistance)]
    })
  })
  return writeCsv([['machine', 'date', 'hours [h]', ...units.map((unit) => `distance [${unit}]`)], ...rows])
}
