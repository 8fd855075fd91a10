import { dropUndefined, type Reason, requireObject } from '../base/index.js'
import type { DateText } from '../calendar/index.js'
import { computeDue, type DueOptions, type IntervalFacts } from '../interval/index.js'
import { resolveLog } from '../record/index.js'
import type { Id, Identity, MachineLog, Service, SpecSheet } from '../spec/index.js'
import { resolveLeaf } from '../spec/index.js'
import { serviceReason } from './codes.js'
import { listSatisfyingServices } from './gearcases.js'
import { listServiceParts } from './listServiceParts.js'
import { requireDueFacts } from './requireVisit.js'
import type { PlannedDue } from './visitPlan.js'

/** The sheet and log of a machine, and the day. */
export interface DueFacts {
  readonly sheet: SpecSheet
  readonly log: MachineLog
  readonly today: DateText
}

/** A service of a machine on one gearcase and instance, with its verdict. */
export type ServiceDue = Omit<PlannedDue, 'taken'> & { readonly gearcase: Id }

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
  const { log, notDone } = resolveLog(facts.log, sheet)
  const { identity } = log
  const due: ServiceDue[] = []
  for (const { unknownReasons, ...common } of listServiceParts(sheet, identity)) {
    const { service, gearcase, part } = common
    if (unknownReasons.length > 0) {
      due.push({
        ...common,
        verdict: 'cannot tell',
        lines: [],
        reasons: unknownReasons,
        missing: unknownReasons,
      })
      continue
    }
    const { intervals, events } = sheet.services[service] as Service
    const instance = part.instance?.id
    const { verdict, lines, dueBy, dueOn, reasons, missing } = computeDue(
      dropUndefined({
        intervals: resolveIntervals(sheet, identity, service, intervals),
        log,
        service,
        doneBy: listSatisfyingServices(sheet, service),
        gearcase,
        instance,
        events,
        today,
      }),
      options,
    )
    const notCounted = notDone
      .filter(
        ({ entry: one }) =>
          one.service === service &&
          one.gearcase === gearcase &&
          (one.instance === undefined || one.instance === instance),
      )
      .map(({ date, reason }) => serviceReason('service/record-not-counted', { date, reason: { ...reason } }))
    due.push(
      dropUndefined({
        ...common,
        verdict,
        lines,
        dueBy,
        dueOn,
        reasons: [...replaceServiceIds(sheet, reasons), ...notCounted],
        missing,
      }),
    )
  }
  return due
}

/** Replaces ids of services in reasons by their names. */
function replaceServiceIds(sheet: SpecSheet, reasons: readonly Reason[]): readonly Reason[] {
  return reasons.map((reason) => {
    const { service } = reason.params
    if (reason.code !== 'interval/done-by-other-service' || typeof service !== 'string') return reason
    const name = Object.hasOwn(sheet.services, service) ? sheet.services[service]?.name : undefined
    return name === undefined ? reason : { ...reason, params: { ...reason.params, service: name } }
  })
}

function resolveIntervals(
  sheet: SpecSheet,
  identity: Identity,
  service: Id,
  { first, window, severe, countFrom }: Service['intervals'],
): IntervalFacts['intervals'] {
  const at = (name: string) =>
    resolveLeaf(sheet, identity, 'interval', `/services/${service}/intervals/${name}`)
  return dropUndefined({
    repeat: at('repeat'),
    countFrom,
    first: first && at('first'),
    window: window && at('window'),
    severe:
      severe &&
      (severe.kind === 'interval'
        ? { kind: severe.kind, interval: at('severe/interval'), criteria: severe.criteria }
        : { kind: severe.kind, factor: severe.factor, criteria: severe.criteria }),
  })
}
