import { dropUndefined } from '../base/index.js'
import { compareDates, type DateText } from '../calendar/index.js'
import type { MachineLog, MeterReading, SpecSheet } from '../spec/index.js'
import { describeIdentity } from './describeIdentity.js'
import type { PlannedMachine, VisitPlan } from './visitPlan.js'

/** The names of a machine from its log and sheet, and its variant, if it is known. */
export function describeMachine(sheet: SpecSheet, { id, name, identity }: MachineLog): PlannedMachine {
  return { log: id, name, ...describeIdentity(sheet, identity) }
}

/** The last meter readings up to a day, as displayed. */
export function readLatestReadings({ meters }: MachineLog, today: DateText): VisitPlan['readings'] {
  const findLatest = <U extends string>(unit: U | undefined, readings: readonly MeterReading[] = []) => {
    const [lastReading] = readings
      .filter(({ date }) => compareDates(date, today) <= 0)
      .toReversed()
      .sort((reading, other) => compareDates(other.date, reading.date))
    return lastReading && unit && { value: lastReading.value, unit, date: lastReading.date }
  }
  return dropUndefined({
    hours: findLatest('h', meters.hours?.readings),
    distance: findLatest(meters.distance?.unit, meters.distance?.readings),
  })
}
