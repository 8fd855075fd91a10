import type { ImportedMachine } from '../exchange/index.js'
import { convertAmount } from '../quantity/index.js'
import type { MachineLog, MeterName, MeterReading } from '../spec/index.js'

/** A log with the readings that were sent for it, and what became of them. */
export interface AddedReadings {
  readonly log: MachineLog
  readonly added: Readonly<Record<MeterName, number>>
  /** Days that the log has a reading of already: its own stays. */
  readonly kept: number
  /** Meters that the log does not keep. */
  readonly notKept: readonly MeterName[]
}

/**
 * Adds to a log the readings that a machine sent, one a day: of several on one day the last. A reading that the log has
 * of that day stays, since somebody stood before the meter. Distances are turned into the log's own unit.
 */
export function addReadings(log: MachineLog, { hours, distance }: ImportedMachine): AddedReadings {
  const { meters } = log
  const unit = meters.distance?.unit
  const sent: Readonly<Record<MeterName, readonly MeterReading[]>> = {
    hours,
    distance: (distance?.readings ?? []).map(({ date, value }) => ({
      date,
      value:
        distance === undefined || unit === undefined || distance.unit === unit
          ? value
          : convertAmount({ value, unit: distance.unit }, unit).value,
    })),
  }
  const atHours = mergeReadings(meters.hours?.readings ?? [], sent.hours)
  const atDistance = mergeReadings(meters.distance?.readings ?? [], sent.distance)
  return {
    log: {
      ...log,
      meters: {
        ...(meters.hours === undefined ? {} : { hours: { ...meters.hours, readings: atHours.readings } }),
        ...(meters.distance === undefined
          ? {}
          : { distance: { ...meters.distance, readings: atDistance.readings } }),
      },
    },
    added: {
      hours: meters.hours === undefined ? 0 : atHours.added,
      distance: meters.distance === undefined ? 0 : atDistance.added,
    },
    kept:
      (meters.hours === undefined ? 0 : atHours.kept) + (meters.distance === undefined ? 0 : atDistance.kept),
    notKept: (['hours', 'distance'] as const).filter(
      (meter) => meters[meter] === undefined && sent[meter].length > 0,
    ),
  }
}

function mergeReadings(
  own: readonly MeterReading[],
  sent: readonly MeterReading[],
): { readonly readings: readonly MeterReading[]; readonly added: number; readonly kept: number } {
  const days = new Set(own.map(({ date }) => date))
  // Sent readings are sorted by day and value: the last of a day is written last.
  const byDay = new Map(sent.map((reading) => [reading.date, reading]))
  const fresh = [...byDay.values()].filter(({ date }) => !days.has(date))
  const readings = [...own, ...fresh].sort((first, second) =>
    first.date < second.date ? -1 : first.date > second.date ? 1 : 0,
  )
  return { readings, added: fresh.length, kept: byDay.size - fresh.length }
}
