import { requireObject } from '../base/index.js'
import type { DateText } from '../calendar/index.js'
import type { DueOptions } from '../interval/index.js'
import { resolveLog } from '../record/index.js'
import type { MachineLog, SpecSheet } from '../spec/index.js'
import { judgeServices, resolveServices, type ServiceDue } from './createDueLister.js'
import { requireDueFacts } from './requireVisit.js'

export type { ServiceDue } from './createDueLister.js'

/** The sheet and log of a machine, and the day. */
export interface DueFacts {
  readonly sheet: SpecSheet
  readonly log: MachineLog
  readonly today: DateText
}

/**
 * Finds which services of one machine are due, on every gearcase and instance that it has. For one service,
 * use `computeDue`.
 *
 * Corrections apply, and a record whose work was not done does not count: see `resolveLog`. A gearcase that
 * shares the oil of another is not listed; the service of the owner counts. A gearcase that the machine may
 * or may not have is `cannot tell`, with the missing fact.
 * @param facts - sheet, log and today
 * @param options - those of `computeDue`; none has a default
 * @returns one line for each service, gearcase and instance, in the order of the sheet
 * @throws TypeError if an argument is not an object or has an unknown key, or if the sheet or log was not
 *   parsed; RangeError if `today` is not a date, or an option is out of its range
 *
 * Source: house rule. The verdicts are those of `computeDue`.
 * @example
 * ```ts
 * import { listDue } from 'drivetrain-service/v1/service'
 * const machine = { make: 'Invented', model: 'Example', type: 'carrier', variants: { only: { name: 'Only' } }, axles: {}, supports: {} }
 * const sheet = { kind: 'spec-sheet', version: '1.0', id: 'example', revision: '1', machine, sources: {}, gearcases: {}, services: {} } as const
 * const log = { kind: 'machine-log', version: '1.0', id: 'one', name: 'One', sheet: { id: 'example', revision: '1' }, identity: {}, meters: {}, records: [] } as const
 * const options = { soon: {}, staleAfter: { days: 30 }, severity: 'normal' } as const
 * // How many services are listed if the sheet has none?
 * listDue({ sheet, log, today: '2031-10-06' }, options).length // => 0
 * ```
 */
export function listDue(facts: DueFacts, options: DueOptions): readonly ServiceDue[] {
  requireDueFacts(facts, ['sheet', 'log', 'today'])
  requireObject('options', options)
  const { sheet, today } = facts
  const resolved = resolveLog(facts.log, sheet)
  return judgeServices(sheet, resolveServices(sheet, resolved.log.identity), resolved, today, options)
}
