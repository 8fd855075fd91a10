import { compareDates, type DateText } from '../calendar/index.js'
import { type Id, type MachineLog, type MeterReading, resolveVariant, type SpecSheet } from '../spec/index.js'
import type { PlannedMachine, VisitPlan } from './visitPlan.js'

/** Which machine it is: names from its log and sheet, and exactly which variant, or that the variant is unknown. */
export function describeMachine(sheet: SpecSheet, log: MachineLog): PlannedMachine {
  const { make, model, type, variants } = sheet.machine
  const verdict = resolveVariant(sheet, log.identity)
  const named = (id: Id) => ({ id, name: variants[id]?.name ?? id })
  return {
    log: log.id,
    name: log.name,
    make,
    model,
    type,
    sheet: { id: sheet.id, revision: sheet.revision },
    ...(sheet.header === undefined ? {} : { header: sheet.header }),
    identity: log.identity,
    variant:
      verdict.verdict === 'selected'
        ? { verdict: 'one', ...named(verdict.variant), reasons: verdict.reasons }
        : {
            verdict: 'cannot tell',
            missing: verdict.verdict === 'cannot tell' ? verdict.missing : [],
            candidates: verdict.candidates.map(named),
            reasons: verdict.reasons,
          },
  }
}

/** The last readings up to a day, as the meters show them. */
export function readLatest({ meters }: MachineLog, today: DateText): VisitPlan['readings'] {
  const latest = (readings: readonly MeterReading[] = []) =>
    readings
      .filter(({ date }) => compareDates(date, today) <= 0)
      .reduce<MeterReading | undefined>(
        (last, next) => (last === undefined || compareDates(next.date, last.date) >= 0 ? next : last),
        undefined,
      )
  const hours = latest(meters.hours?.readings)
  const distance = latest(meters.distance?.readings)
  return {
    ...(hours === undefined ? {} : { hours: { value: hours.value, unit: 'h', date: hours.date } }),
    ...(distance === undefined || meters.distance === undefined
      ? {}
      : { distance: { value: distance.value, unit: meters.distance.unit, date: distance.date } }),
  }
}
