import { dropUndefined, type Finding, type JsonPointer, type Result } from '../base/index.js'
import { compareDates, type DateText } from '../calendar/index.js'
import { buildProcedure, type ProcedureCodes, validateProcedure } from '../procedure/index.js'
import { resolveLog } from '../record/index.js'
import type { Id, MachineEventKind, MachineLog, ProcedureDocument, SpecSheet } from '../spec/index.js'
import { type ServiceCodes, serviceFinding } from './codes.js'
import { listSatisfyingServices } from './gearcases.js'
import { listDue, type ServiceDue } from './listDue.js'
import type { VisitFacts, VisitOptions } from './requireVisit.js'
import type { PlannedDue } from './visitPlan.js'

/** The content of a visit: the services with their due lines, the chosen ones, and the procedure. */
interface ChosenVisit {
  readonly serviceLines: readonly ServiceDue[]
  readonly due: readonly PlannedDue[]
  /** Each one has its pointer into the plan's `due`. */
  readonly chosen: readonly (ServiceDue & { readonly due: JsonPointer })[]
  /** Absent if there is no work. */
  readonly procedure?: ProcedureDocument
}

/**
 * Chooses the services of a visit and its procedure; the result is not ok if documents do not belong
 * together.
 */
export function chooseVisit(
  facts: VisitFacts,
  { services, due: dueOptions, raiseOn }: VisitOptions,
): Result<ChosenVisit, ServiceCodes & ProcedureCodes> {
  const { sheet, log, today, procedure: ownProcedure } = facts
  const mismatches = findMismatches(sheet, log, services, ownProcedure)
  if (mismatches.length > 0) return { ok: false, findings: mismatches }
  const serviceLines = listDue({ sheet, log, today }, dueOptions)
  const workChoices = chooseWork(sheet, serviceLines, ownProcedure?.services ?? services).map(
    (work, place) =>
      ownProcedure === undefined || includesService(ownProcedure, serviceLines[place])
        ? work
        : { taken: false },
  )
  const chosen = serviceLines.flatMap((line, place) =>
    workChoices[place]?.taken ? [{ ...line, due: `/due/${place}` }] : [],
  )
  const due = serviceLines.map(({ gearcase: _gearcase, ...line }, place) => ({
    ...line,
    taken: false,
    ...workChoices[place],
  }))
  const procedureResult = chooseProcedure(
    { ...facts, log: resolveLog(log, sheet).log },
    serviceLines,
    chosen,
    raiseOn,
  )
  if (!procedureResult.ok) return procedureResult
  const value = dropUndefined({ serviceLines, due, chosen, procedure: procedureResult.value })
  return { ok: true, value, findings: procedureResult.findings }
}

/** The procedure of a visit: the writer's, checked for this machine, or one built for the chosen services. */
function chooseProcedure(
  facts: VisitFacts,
  serviceLines: readonly ServiceDue[],
  chosen: readonly ServiceDue[],
  raiseOn = chooseRaising(facts),
): Result<ProcedureDocument | undefined, ProcedureCodes> {
  const { sheet, log, procedure } = facts
  const { identity } = log
  const events = listUnservicedEvents(facts, serviceLines)
  if (procedure !== undefined) {
    const findings = validateProcedure({ ...procedure, identity, events }, sheet)
    return procedure.sheet.id === sheet.id
      ? { ok: true, value: procedure, findings }
      : { ok: false, findings: findings.filter(({ code }) => code === 'procedure/other-sheet') }
  }
  if (chosen.length === 0) return { ok: true, value: undefined, findings: [] }
  const services = [...new Set(chosen.map(({ service }) => service))]
  const only = chosen.map(({ service, gearcase, part }) =>
    dropUndefined({ service, gearcase, instance: part.instance?.id }),
  )
  return buildProcedure({ sheet, identity, services, only, ...(events.length > 0 && { events }), raiseOn })
}

/** Events after which the oil of an affected gearcase was not changed. */
function listUnservicedEvents(
  { sheet, log, today }: VisitFacts,
  serviceLines: readonly ServiceDue[],
): readonly MachineEventKind[] {
  const changedGearcases = new Set(
    serviceLines.flatMap(({ gearcase, task }) => (task === 'change' ? gearcase : [])),
  )
  const isChangedSince = (gearcase: Id, since: DateText) =>
    log.records.some(
      ({ date, entries }) =>
        compareDates(date, since) >= 0 &&
        entries.some(
          (entry) => entry.gearcase === gearcase && sheet.services[entry.service]?.task === 'change',
        ),
    )
  return (log.events ?? []).flatMap((event) => {
    if ('meter' in event || compareDates(event.date, today) > 0) return []
    const affectedGearcases = [...changedGearcases].filter(
      (gearcase) => event.gearcases?.includes(gearcase) ?? true,
    )
    return affectedGearcases.every((gearcase) => isChangedSince(gearcase, event.date)) ? [] : event.kind
  })
}

/** Findings that make a plan impossible: a log of another sheet, or services that are not on the sheet. */
function findMismatches(
  sheet: SpecSheet,
  log: MachineLog,
  services: VisitOptions['services'],
  ownProcedure: ProcedureDocument | undefined,
): readonly Finding<ServiceCodes>[] {
  const { id, revision } = log.sheet
  if (id !== sheet.id || revision !== sheet.revision) {
    const document = { kind: 'machine-log', id: log.id } as const
    const params = { required: id, revision, given: sheet.id, givenRevision: sheet.revision }
    return [serviceFinding('service/wrong-sheet', 'error', document, '/sheet', params)]
  }
  if (services === 'due') return []
  if (ownProcedure !== undefined && !isSameSet(services, ownProcedure.services)) {
    const document = { kind: 'procedure', id: ownProcedure.id } as const
    const params = { services: ownProcedure.services, asked: services }
    return [serviceFinding('service/procedure-of-other-services', 'error', document, '/services', params)]
  }
  const document = { kind: 'spec-sheet', id: sheet.id } as const
  const known = Object.keys(sheet.services)
  return services
    .filter((service) => !known.includes(service))
    .map((service) =>
      serviceFinding('service/service-not-on-sheet', 'error', document, '/services', { service, known }),
    )
}

const isSameSet = (first: readonly Id[], second: readonly Id[]) =>
  first.every((id) => second.includes(id)) && second.every((id) => first.includes(id))

/** Whether a procedure does this service at this gearcase and instance. */
function includesService({ services, only }: ProcedureDocument, line: ServiceDue | undefined): boolean {
  if (line === undefined || !services.includes(line.service)) return false
  const { service, gearcase, part } = line
  return (
    only?.some(
      (candidate) =>
        candidate.service === service &&
        candidate.gearcase === gearcase &&
        (candidate.instance === undefined || candidate.instance === part.instance?.id),
    ) ?? true
  )
}

/** Ramps are used only if the toolbox has no stands and the manual permits ramps for every axle. */
export function chooseRaising({ sheet, toolbox }: Pick<VisitFacts, 'sheet' | 'toolbox'>): 'stands' | 'ramps' {
  const hasOnlyRamps =
    toolbox !== undefined &&
    Object.keys(toolbox.stands).length === 0 &&
    Object.keys(toolbox.ramps ?? {}).length > 0
  return hasOnlyRamps && Object.values(sheet.machine.axles).every(({ ramps }) => ramps === true)
    ? 'ramps'
    : 'stands'
}

/** A service that may be chosen. Its verdict counts only if the caller asks for the due services. */
type WorkLine = Pick<ServiceDue, 'service' | 'serviceName' | 'gearcase' | 'part'> & {
  readonly verdict?: ServiceDue['verdict']
}

const DUE_VERDICTS: ReadonlySet<string> = new Set(['overdue', 'due', 'due soon'])

/**
 * Chooses the work of a visit from the list of services: those that are overdue, due or due soon, or the
 * named ones with any verdict. Work that another chosen service includes, such as a level check by an oil
 * change, is omitted. If services include each other, the first is chosen.
 * @returns for each line, whether it is chosen, and the name of the chosen service that includes it
 */
export function chooseWork(
  sheet: SpecSheet,
  due: readonly WorkLine[],
  services: readonly Id[] | 'due',
): readonly { readonly taken: boolean; readonly coveredBy?: string }[] {
  const requestedLines = due.map(({ service, verdict = 'not due' }) =>
    services === 'due' ? DUE_VERDICTS.has(verdict) : services.includes(service),
  )
  const includesWork = (other: WorkLine, line: WorkLine): boolean =>
    other.gearcase === line.gearcase &&
    other.part.instance?.id === line.part.instance?.id &&
    listSatisfyingServices(sheet, line.service).includes(other.service)
  const taken = due.map(
    (line, place) =>
      requestedLines[place] === true &&
      !due.some(
        (other, otherPlace) =>
          requestedLines[otherPlace] === true &&
          includesWork(other, line) &&
          (otherPlace < place || !includesWork(line, other)),
      ),
  )
  return due.map((line, place) => {
    if (taken[place] === true) return { taken: true }
    const coveredBy = due.find((other, at) => taken[at] === true && includesWork(other, line))?.serviceName
    return { taken: false, ...(coveredBy === undefined ? {} : { coveredBy }) }
  })
}
