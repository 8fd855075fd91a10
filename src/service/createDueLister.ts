import { dropUndefined, type Reason } from '../base/index.js'
import type { DateText } from '../calendar/index.js'
import { createDueJudge, type DueOptions, type IntervalFacts } from '../interval/index.js'
import type { ResolvedLog } from '../record/index.js'
import type { Id, Identity, Service, SpecSheet } from '../spec/index.js'
import { resolveLeaf } from '../spec/index.js'
import { serviceReason } from './codes.js'
import { listSatisfyingServices } from './gearcases.js'
import { listServiceParts, type ServiceOnGearcase } from './listServiceParts.js'
import type { PlannedDue } from './visitPlan.js'

/** A service of a machine on one gearcase and instance, with its verdict. */
export type ServiceDue = Omit<PlannedDue, 'taken'> & { readonly gearcase: Id }

type LimitsRead = Parameters<typeof createDueJudge>[3]
type ServiceFacts = Omit<IntervalFacts, 'log' | 'today'>

/** A service of all machines with the same facts: everything that does not depend on their logs. */
interface ResolvedService {
  readonly common: Omit<ServiceOnGearcase, 'unknownReasons'>
  readonly unknownReasons: readonly Reason[]
  /** Absent if it is unknown whether the machine has the service. */
  readonly facts?: ServiceFacts
}

/** Machines of one sheet with other facts than these are resolved again. */
const MAX_IDENTITIES = 1000

/**
 * Lists the due services of machines of one sheet, as `listDue`. Services and intervals are resolved once for all machines
 * with the same variant, model year and market. The sheet must not change meanwhile.
 */
export function createDueLister(
  sheet: SpecSheet,
): (resolved: ResolvedLog, today: DateText, options: DueOptions) => readonly ServiceDue[] {
  const limitsRead: LimitsRead = new Map()
  const servicesByIdentity = new Map<string, readonly ResolvedService[]>()
  // Serial numbers differ between machines, but few sheets have conditions on them.
  const readsSerials = JSON.stringify(sheet).includes('"serials":')
  const findServices = (identity: Identity): readonly ResolvedService[] => {
    const { serial, variant, modelYear, market } = identity
    const key = JSON.stringify([variant, modelYear, market, readsSerials && serial])
    const known = servicesByIdentity.get(key)
    if (known !== undefined) return known
    const services = resolveServices(sheet, identity)
    if (servicesByIdentity.size >= MAX_IDENTITIES) {
      servicesByIdentity.clear()
      limitsRead.clear()
    }
    servicesByIdentity.set(key, services)
    return services
  }
  return (resolved, today, options) =>
    judgeServices(sheet, findServices(resolved.log.identity), resolved, today, options, limitsRead)
}

/** The verdicts of resolved services of one machine. */
export function judgeServices(
  sheet: SpecSheet,
  services: readonly ResolvedService[],
  { log, notDone }: ResolvedLog,
  today: DateText,
  options: DueOptions,
  limitsRead: LimitsRead = new Map(),
): readonly ServiceDue[] {
  const judge = createDueJudge(log, today, options, limitsRead)
  return services.map(({ common, unknownReasons, facts }): ServiceDue => {
    if (facts === undefined)
      return {
        ...common,
        verdict: 'cannot tell',
        lines: [],
        reasons: unknownReasons,
        missing: unknownReasons,
      }
    const { verdict, lines, dueBy, dueOn, reasons, missing } = judge(facts)
    // Hot path: no spread.
    const { service, serviceName, task, gearcase, part } = common
    const due: MutableDue = { service, serviceName, task, gearcase, part, verdict, lines }
    if (dueBy !== undefined) due.dueBy = dueBy
    if (dueOn !== undefined) due.dueOn = dueOn
    due.reasons = replaceServiceIds(sheet, facts, reasons)
    if (notDone.length > 0) due.reasons = [...due.reasons, ...listNotCounted(facts, notDone)]
    due.missing = missing
    return due as ServiceDue
  })
}

/** A line that is not yet complete. */
type MutableDue = { -readonly [Key in keyof ServiceDue]?: ServiceDue[Key] }

/** The reasons for the records of a service that do not count. */
function listNotCounted(
  { service, gearcase, instance }: ServiceFacts,
  notDone: ResolvedLog['notDone'],
): readonly Reason[] {
  return notDone
    .filter(
      ({ entry }) =>
        entry.service === service &&
        entry.gearcase === gearcase &&
        (entry.instance === undefined || entry.instance === instance),
    )
    .map(({ date, reason }) => serviceReason('service/record-not-counted', { date, reason: { ...reason } }))
}

/** Finds the services of a machine and their intervals. */
export function resolveServices(sheet: SpecSheet, identity: Identity): readonly ResolvedService[] {
  return listServiceParts(sheet, identity).map(({ unknownReasons, ...common }) => {
    if (unknownReasons.length > 0) return { common, unknownReasons }
    const { service, gearcase, part } = common
    const { intervals, events } = sheet.services[service] as Service
    const facts = dropUndefined({
      intervals: resolveIntervals(sheet, identity, service, intervals),
      service,
      doneBy: listSatisfyingServices(sheet, service),
      gearcase,
      instance: part.instance?.id,
      events,
    })
    return { common, unknownReasons, facts }
  })
}

/** Replaces ids of services in reasons by their names. */
function replaceServiceIds(
  sheet: SpecSheet,
  { doneBy = [] }: ServiceFacts,
  reasons: readonly Reason[],
): readonly Reason[] {
  if (doneBy.length === 0) return reasons
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
