import { dropUndefined } from '../base/index.js'
import { compareDates, type DateText } from '../calendar/index.js'
import { type Id, type MachineLog, type MeterReading, resolveVariant, type SpecSheet } from '../spec/index.js'
import type { PlannedMachine, VisitPlan } from './visitPlan.js'

/** Which machine it is: names from its log and sheet, and exactly which variant, or that the variant is unknown. */
export function describeMachine(sheet: SpecSheet, { id, name, identity }: MachineLog): PlannedMachine {
  const { make, model, type, variants } = sheet.machine
  const found = resolveVariant(sheet, identity)
  const named = (variant: Id) => ({ id: variant, name: variants[variant]?.name ?? variant })
  const { reasons } = found
  const variant: PlannedMachine['variant'] =
    found.verdict === 'selected'
      ? { verdict: 'one', ...named(found.variant), reasons }
      : {
          verdict: 'cannot tell',
          missing: found.verdict === 'cannot tell' ? found.missing : [],
          candidates: found.candidates.map(named),
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

/** The last readings up to a day, as the meters show them. */
export function readLatest({ meters }: MachineLog, today: DateText): VisitPlan['readings'] {
  const latest = <U extends string>(unit: U | undefined, readings: readonly MeterReading[] = []) => {
    const [last] = readings
      .filter(({ date }) => compareDates(date, today) <= 0)
      .toReversed()
      .sort((one, other) => compareDates(other.date, one.date))
    return last && unit && { value: last.value, unit, date: last.date }
  }
  return dropUndefined({
    hours: latest('h', meters.hours?.readings),
    distance: latest(meters.distance?.unit, meters.distance?.readings),
  })
}
