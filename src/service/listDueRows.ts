import { dropUndefined, joinPointer } from '../base/index.js'
import { addToDay, type DateText, dateFromDay, dayNumberOf } from '../calendar/index.js'
import type { DueLine, DueOptions, DueRow } from '../interval/index.js'
import { countPauseDays, countsPerUnit, meterCount } from '../interval/index.js'
import type { DistanceUnit } from '../quantity/index.js'
import { type DueFacts, listDue, type ServiceDue } from './listDue.js'

/**
 * More than any machine reaches, so that an unknown window never ends; in miles still below the limit of a meter.
 */
const NEVER_REACHED = { hours: 900_000_000, distance: 5_000_000, days: 3_000_000 }

type MutableRow = { -readonly [Key in keyof DueRow]: DueRow[Key] }

/**
 * The services of one machine as flat rows, for a fleet in a table: `dueSql` or `computeDueColumns` gives each row the
 * verdict that {@link listDue} gives the service. Rewrite the rows of a machine when its log changes; the verdicts of a
 * later day need no new rows. For a few machines use {@link listDue}, which also gives the reasons.
 *
 * Meters count from the last service: `lastHours` is 0 and `hours` is the use since then. A limit from a
 * schedule is the use up to its next due point. Limits that cannot be determined are `cannot tell` in the row
 * too. A reading before a pause is dated later by the days of the pause, since its age is in days of use.
 * @param facts - sheet, log and today
 * @param options - those of `computeDue`; none has a default
 * @returns one row for each line of `listDue`, in the same order; `id` is a JSON Pointer of log, service,
 *   gearcase and instance
 * @throws the errors of {@link listDue}
 *
 * Source: house rule. The verdicts are those of `listDue` (checked by tests).
 * @example
 * ```ts
 * import { listDueRows } from 'drivetrain-service/v1/service'
 * const machine = { make: 'Invented', model: 'Example', type: 'carrier', variants: { only: { name: 'Only' } }, axles: {}, supports: {} }
 * const sheet = { kind: 'spec-sheet', version: '1.0', id: 'example', revision: '1', machine, sources: {}, gearcases: {}, services: {} } as const
 * const log = { kind: 'machine-log', version: '1.0', id: 'one', name: 'One', sheet: { id: 'example', revision: '1' }, identity: {}, meters: {}, records: [] } as const
 * const options = { soon: {}, staleAfter: { days: 30 }, severity: 'normal' } as const
 * // How many rows does a machine without services have?
 * listDueRows({ sheet, log, today: '2031-10-06' }, options).length // => 0
 * ```
 */
export function listDueRows(
  facts: DueFacts,
  options: DueOptions,
): readonly (DueRow & { readonly id: string })[] {
  return listDue(facts, options).map((due) => {
    const { service, gearcase, part } = due
    const tokens = [
      facts.log.id,
      service,
      gearcase,
      ...(part.instance === undefined ? [] : [part.instance.id]),
    ]
    return { ...makeRow(due, facts), id: joinPointer(tokens) }
  })
}

function makeRow({ lines, missing }: ServiceDue, facts: DueFacts): DueRow {
  const row: MutableRow = {}
  const events = lines.flatMap(({ by, from }) => (by === 'event' ? (from?.date ?? []) : []))
  const eventDate = events.sort().at(-1)
  const startDate = lines.find(({ since, from }) => since !== undefined && from?.date !== undefined)?.from
    ?.date
  // If the first use of a machine is not known, there is no calendar limit.
  let lastDate = startDate ?? (lines.some(({ since }) => since !== undefined) ? '1900-01-01' : undefined)
  // A row ignores events up to the last service. Such an event is still open here, so the row dates the service before
  // it.
  if (eventDate !== undefined) {
    row.eventDate = eventDate
    if (lastDate !== undefined && eventDate <= lastDate) lastDate = addDays(eventDate, -1)
  }
  if (lastDate !== undefined) row.lastDate = lastDate
  const isWindowUnknown = missing.some(({ params }) => params['which'] === 'window')
  for (const line of lines) {
    if (line.by === 'period') addPeriodFields(row, line, lastDate ?? '', isWindowUnknown)
    else if (line.by !== 'event') addMeterFields(row, line, isWindowUnknown, facts)
  }
  return row
}

function addPeriodFields(
  row: MutableRow,
  { duePoint, overdueAfter }: DueLine,
  lastDate: DateText,
  isWindowUnknown: boolean,
): void {
  const due = dayNumberOf(duePoint?.date)
  const overdueDay = dayNumberOf(overdueAfter?.date)
  // A limit of 0 days is `cannot tell`.
  row.everyDays = Number.isNaN(due) ? 0 : due - dayNumberOf(lastDate)
  if (isWindowUnknown) row.windowDays = NEVER_REACHED.days
  else if (!Number.isNaN(overdueDay)) row.windowDays = overdueDay - due
}

function addMeterFields(
  row: MutableRow,
  line: DueLine,
  isWindowUnknown: boolean,
  { log, today }: DueFacts,
): void {
  const { by, verdict, limit, used, left, now, duePoint, overdueAfter } = line
  if (limit === undefined || 'period' in limit) return
  const isJudged = used !== undefined && left !== undefined && used.unit !== 'd'
  // The unit of the meter, or of the limit if it cannot be judged.
  const unit = isJudged ? used.unit : limit.unit
  const toUnit = (counts: number): number | undefined =>
    Number.isNaN(counts) ? undefined : counts / countsPerUnit(unit)
  const toCounts = (amount: { readonly value: number } | undefined): number =>
    amount === undefined ? NaN : meterCount(amount.value, unit)
  const every = isJudged ? toUnit(toCounts(used) + toCounts(left)) : limit.value
  const window = toUnit(toCounts(overdueAfter?.meter) - toCounts(duePoint?.meter))
  const readingDay = dayNumberOf(now?.date)
  const pausedDays = countPauseDays(log.pauses, readingDay, dayNumberOf(today))
  const readOn = Number.isNaN(readingDay) ? undefined : dateFromDay(readingDay + pausedDays)
  const last = isJudged ? 0 : undefined
  const isTracked = verdict !== 'not tracked'
  const fields =
    by === 'hours'
      ? {
          everyHours: every,
          windowHours: isWindowUnknown ? NEVER_REACHED.hours : window,
          lastHours: last,
          hours: used?.value,
          hoursDate: readOn,
          noHourMeter: isTracked ? undefined : true,
        }
      : {
          everyDistance: every,
          everyDistanceUnit: unit as DistanceUnit,
          windowDistance: isWindowUnknown ? NEVER_REACHED.distance : window,
          distanceUnit: unit as DistanceUnit,
          lastDistance: last,
          distance: used?.value,
          distanceDate: readOn,
          noOdometer: isTracked ? undefined : true,
        }
  Object.assign(row, dropUndefined(fields))
}

/** Adds days to a date. */
function addDays(date: DateText, days: number): DateText {
  return dateFromDay(addToDay(dayNumberOf(date), 0, days))
}
