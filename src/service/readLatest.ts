import { compareDates, type DateText } from '../calendar/index.js'
import type { MachineLog } from '../spec/index.js'
import type { VisitPlan } from './visitPlan.js'

/** The last readings up to a day, as the meters show them. */
export function readLatest({ meters }: MachineLog, today: DateText): VisitPlan['readings'] {
  const latest = (readings: readonly { readonly date: DateText; readonly value: number }[]) =>
    readings
      .filter(({ date }) => compareDates(date, today) <= 0)
      .reduce<{ readonly date: DateText; readonly value: number } | undefined>(
        (last, next) => (last === undefined || compareDates(next.date, last.date) >= 0 ? next : last),
        undefined,
      )
  const hours = latest(meters.hours?.readings ?? [])
  const distance = latest(meters.distance?.readings ?? [])
  return {
    ...(hours === undefined ? {} : { hours: { value: hours.value, unit: 'h', date: hours.date } }),
    ...(distance === undefined || meters.distance === undefined
      ? {}
      : { distance: { value: distance.value, unit: meters.distance.unit, date: distance.date } }),
  }
}
