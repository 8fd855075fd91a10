import { dropUndefined } from '../base/index.js'
import { compareDates, type DateText } from '../calendar/index.js'
import { type Id, type MachineLog, type MeterReading, resolveVariant, type SpecSheet } from '../spec/index.js'
import type { PlannedMachine, VisitPlan } from './visitPlan.js'

/** The names of a machine from its log and sheet, and its variant, if it is known. */
export function describeMachine(sheet: SpecSheet, { id, name, identity }: MachineLog): PlannedMachine {
  const { make, model, type, variants } = sheet.machine
  const resolved = resolveVariant(sheet, identity)
  const describeVariant = (variant: Id) => ({ id: variant, name: variants[variant]?.name ?? variant })
  const { reasons } = resolved
  const variant: PlannedMachine['variant'] =
    resolved.verdict === 'selected'
      ? { verdict: 'one', ...describeVariant(resolved.variant), reasons }
      : {
          verdict: 'cannot tell',
          missing: resolved.verdict === 'cannot tell' ? resolved.missing : [],
          candidates: resolved.candidates.map(describeVariant),
          reasons,
        }
  const reference = { id: sheet.id, revision: sheet.revision }
  return dropUndefined({
    log: id,
    name,
    make,
    model,
    type,
    sheet: reference,
    header: sheet.header,
    identity,
    variant,
  })
}

/** The last meter readings up to a day, as displayed. */
export function readLatestReadings({ meters }: MachineLog, today: DateText): VisitPlan['readings'] {
  const findLatest = <U extends string>(unit: U | undefined, readings: readonly MeterReading[] = []) => {
    const [lastReading] = readings
      .filter(({ date }) => compareDates(date, today) <= 0)
      .toReversed()
      .sort((one, other) => compareDates(other.date, one.date))
    return lastReading && unit && { value: lastReading.value, unit, date: lastReading.date }
  }
  return dropUndefined({
    hours: findLatest('h', meters.hours?.readings),
    distance: findLatest(meters.distance?.unit, meters.distance?.readings),
  })
}
