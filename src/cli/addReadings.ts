import type { ImportedMachine } from '../exchange/index.js'
import { convertAmount } from '../quantity/index.js'
import type { DistanceMeter, HourMeter, MachineLog, MeterName, MeterReading } from '../spec/index.js'

/** A log with imported readings. */
export interface AddedReadings {
  readonly log: MachineLog
  readonly added: Readonly<Record<MeterName, number>>
  /** Number of days that already had a reading in the log. */
  readonly keptDays: number
  /** Meters that the log did not have. */
  readonly newMeters: readonly MeterName[]
}

/**
 * Adds imported readings to a machine's log, the last of each day. A reading already in the log is kept,
 * because a person read the meter. Distances are converted to the log's unit. A meter that the log does not have is added.
 */
export function addReadings(
  log: MachineLog,
  { hours, distance }: Pick<ImportedMachine, 'hours' | 'distance'>,
): AddedReadings {
  const { meters } = log
  const unit = meters.distance?.unit
  const distances = (distance?.readings ?? []).map(({ date, value }) => ({
    date,
    value:
      distance === undefined || unit === undefined || distance.unit === unit
        ? value
        : convertAmount({ value, unit: distance.unit }, unit).value,
  }))
  const hourMeter = mergeReadings<HourMeter>(meters.hours ?? { unit: 'h', readings: [] }, hours)
  const odometer = mergeReadings<DistanceMeter>(
    meters.distance ?? { unit: distance?.unit ?? 'km', readings: [] },
    distances,
  )
  const hasHours = meters.hours !== undefined || hours.length > 0
  const hasDistance = meters.distance !== undefined || distances.length > 0
  return {
    log: {
      ...log,
      meters: {
        ...(hasHours && { hours: hourMeter.meter }),
        ...(hasDistance && { distance: odometer.meter }),
      },
    },
    added: { hours: hourMeter.added, distance: odometer.added },
    keptDays: hourMeter.keptDays + odometer.keptDays,
    newMeters: [
      ...(hasHours && meters.hours === undefined ? (['hours'] as const) : []),
      ...(hasDistance && meters.distance === undefined ? (['distance'] as const) : []),
    ],
  }
}

function mergeReadings<Meter extends { readonly readings: readonly MeterReading[] }>(
  meter: Meter,
  importedReadings: readonly MeterReading[],
): { readonly meter: Meter; readonly added: number; readonly keptDays: number } {
  const days = new Set(meter.readings.map(({ date }) => date))
  // Imported readings are sorted by day and value, so the last of a day overwrites the others.
  const readingByDay = new Map(importedReadings.map((reading) => [reading.date, reading]))
  const added = [...readingByDay.values()].filter(({ date }) => !days.has(date))
  const readings = [...meter.readings, ...added].sort((first, second) =>
    first.date < second.date ? -1 : first.date > second.date ? 1 : 0,
  )
  return { meter: { ...meter, readings }, added: added.length, keptDays: readingByDay.size - added.length }
}
