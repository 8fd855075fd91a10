import { type Reason, requireShape, type Shape } from '../base/index.js'
import type { DateText } from '../calendar/index.js'
import type { Id, MachineLog, RecordEntry, SpecSheet } from '../spec/index.js'
import { requireDocument, resolveRecords } from '../spec/index.js'
import type { RecordCodes } from './codes.js'
import { judgeDone } from './judgeDone.js'

/** An entry of a record whose work does not count as done. */
export interface NotDone {
  /** The record, or the one that was corrected. */
  readonly record: Id
  readonly date: DateText
  readonly entry: RecordEntry
  readonly reason: Reason<keyof RecordCodes>
}

/** A log with only the entries that count. */
export interface ResolvedLog {
  readonly log: MachineLog
  readonly notDone: readonly NotDone[]
}

/**
 * Applies the corrections of a log and removes the work that was not done. Use it before `computeDue` and
 * `forecastDue`, which count every entry; `listDue` and `planVisit` do it themselves.
 *
 * A change is done if an opening or cover that empties the gearcase was opened and oil went in, whatever the
 * quantity. A check is done unless its level is `not checked`. An entry with `notDone` is not done. An entry
 * that cannot be judged counts: in a record of `date and meters only`, or of another revision of the sheet.
 * @param log - the machine's log, with all its records
 * @param sheet - its sheet
 * @returns the log with its records in the same order, corrected, and with only the entries that count; and
 *   the removed entries, each with the reason
 * @throws TypeError if the log or the sheet was not parsed
 *
 * Source: house rule.
 * @example
 * ```ts
 * import { resolveLog } from 'drivetrain-service/v1/service'
 * const machine = { make: 'Invented', model: 'Example', type: 'carrier', variants: { only: { name: 'Only' } }, axles: {}, supports: {} }
 * const sheet = { kind: 'spec-sheet', version: '1.0', id: 'example', revision: '1', machine, sources: {}, gearcases: {}, services: {} } as const
 * const entry = { service: 'change', gearcase: 'rear', notDone: 'no oil', opened: [], tightened: [], seals: [] }
 * const record = {
 *   kind: 'service-record', version: '1.0', id: 'r', machine: 'one', sheet: { id: 'example', revision: '1' },
 *   detail: 'full', date: '2031-10-06', readings: {}, entries: [entry],
 * } as const
 * const log = {
 *   kind: 'machine-log', version: '1.0', id: 'one', name: 'One', sheet: record.sheet, identity: {}, meters: {}, records: [record],
 * } as const
 * // How many entries do not count, if the record says that the work was not done?
 * resolveLog(log, sheet).notDone.length // => 1
 * ```
 */
export function resolveLog(log: MachineLog, sheet: SpecSheet): ResolvedLog {
  requireLog('log', log)
  requireDocument('sheet', sheet, 'spec-sheet')
  return resolveParsedLog(log, sheet)
}

/** {@link resolveLog} for a log and a sheet that were parsed here. */
export function resolveParsedLog(log: MachineLog, sheet: SpecSheet): ResolvedLog {
  const notDone: NotDone[] = []
  const records = resolveRecords(log.records).map(({ record }) => {
    const entries = record.entries.filter((entry) => {
      const reason = judgeDone(record, entry, sheet)
      if (reason !== undefined) notDone.push({ record: record.id, date: record.date, entry, reason })
      return reason === undefined
    })
    return entries.length === record.entries.length ? record : { ...record, entries }
  })
  return { log: { ...log, records }, notDone }
}

/** The parts of a log that corrections and verdicts depend on. */
const RECORDS_SHAPE: Shape = {
  records: [{ readings: {}, entries: [{ opened: [], tightened: [], seals: [] }] }],
}

/** Throws a TypeError that names the field if `log` is not a parsed log. */
export function requireLog(name: string, log: MachineLog): void {
  requireDocument(name, log, 'machine-log')
  requireShape(name, log, RECORDS_SHAPE)
}
