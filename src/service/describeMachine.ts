import { dropUndefined } from '../base/index.js'
import { compareDates, type DateText } from '../calendar/index.js'
import { type Id, type MachineLog, type MeterReading, resolveVariant, type SpecSheet } from '../spec/index.js'
import type { PlannedMachine, VisitPlan } from './visitPlan.js'

/** The names of a machine from its log and sheet, and its variant, if it is known. */
export function describeMachine(sheet: SpecSheet, { id, name, identity }: MachineLog): PlannedMachine {
  const { make, model, type, variants } = sheet.machine
  const resolved = resolveVariant(sheet, identity)
  const nameVariant = (variant: Id) => ({ id: variant, name: variants[variant]?.name ?? variant })
  const { reasons } = resolved
  const variant: PlannedMachine['variant'] =
    resolved.verdict === 'selected'
      ? { verdict: 'one', ...nameVariant(resolved.variant), reasons }
      : {
          verdict: 'cannot tell',
          missing: resolved.verdict === 'cannot tell' ? resolved.missing : [],
          candidates: resolved.candidates.map(nameVariant),
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
export function readLatest({ meters }: MachineLog, today: DateText): VisitPlan['readings'] {
  const latest = <U extends string>(unit: U | undefined, readings: readonly MeterReading[] = []) => {
    const [lastReading] = readings
      .filter(({ date }) => compareDates(date, today) <= 0)
      .toReversed()
      .sort((one, other) => compareDates(other.date, one.date))
    return lastReading && unit && { value: lastReading.value, unit, date: lastReading.date }
  }
  return dropUndefined({
    hours: latest('h', meters.hours?.readings),
    distance: latest(meters.distance?.unit, meters.distance?.readings),
  })
}
