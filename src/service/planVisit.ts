import { dropUndefined, type Finding, type Reason, type Result } from '../base/index.js'
import type { ProcedureCodes } from '../procedure/index.js'
import { resolveLog } from '../record/index.js'
import type { SpecSheet } from '../spec/index.js'
import { chooseVisit } from './chooseVisit.js'
import { type ServiceCodes, serviceFinding, serviceReason } from './codes.js'
import { collectFigures } from './collectFigures.js'
import { describeMachine, readLatestReadings } from './describeMachine.js'
import { listPartsWithoutSteps } from './gearcases.js'
import { judgeOilLoss } from './judgeOilLoss.js'
import type { ServiceDue } from './listDue.js'
import { listMissing } from './listMissing.js'
import { listUnstated } from './listUnstated.js'
import { groupByGearcase, planFilters } from './planFilters.js'
import { planLines } from './planLines.js'
import { planOil } from './planOil.js'
import { planPan } from './planPan.js'
import { planSamples } from './planSamples.js'
import { planSeals } from './planSeals.js'
import { planSteps } from './planSteps.js'
import { planTightenings } from './planTightenings.js'
import { planTime } from './planTime.js'
import { planTools } from './planTools.js'
import { planVessel } from './planVessel.js'
import { planWaits } from './planWaits.js'
import { checkCalibration, excludeReversedWrenches, reportVisit } from './reportVisit.js'
import { requireVisit, type VisitFacts, type VisitOptions } from './requireVisit.js'
import type { VisitContext } from './visitContext.js'
import type { VisitPlan } from './visitPlan.js'

/** The codes of the findings of a plan, including those of its procedure. */
export interface VisitCodes extends ServiceCodes, ProcedureCodes {}

/**
 * Plans one visit to one machine: the due services, the figures for this variant, a single order of work that
 * raises the machine once, oil and seals to take and to buy, wrench settings, waits, cautions, and the
 * missing facts. For only the due services, use {@link listDue}; for a card of the plan, use `cardModel`.
 *
 * A missing fact does not stop the plan: its line is `cannot tell` or `not stated`, and the rest of the plan
 * is complete.
 * @param facts - parsed documents, today, the ambient temperature, and the open faults of the machine
 * @param options - the services, and choices that have no default
 * @returns the plan, plain JSON, with findings about tools, stock, log and a writer's procedure; not ok if
 *   the log or the procedure belongs to another sheet, a service is not in the sheet or the procedure, or no
 *   procedure can be written
 * @throws TypeError or RangeError for misuse, such as a `today` that is not a date, or an unknown option
 *
 * Source: house rule. Each calculation names its source.
 * @example
 * ```ts
 * import { planVisit } from 'drivetrain-service/v1/service'
 * const machine = { make: 'Invented', model: 'Example', type: 'carrier', variants: { only: { name: 'Only' } }, axles: {}, supports: {} }
 * const sheet = { kind: 'spec-sheet', version: '1.0', id: 'example', revision: '1', machine, sources: {}, gearcases: {}, services: {} } as const
 * const log = { kind: 'machine-log', version: '1.0', id: 'one', name: 'One', sheet: { id: 'example', revision: '1' }, identity: {}, meters: {}, records: [] } as const
 * const due = { soon: {}, staleAfter: { days: 30 }, severity: 'normal' } as const
 * // How much work is there if the sheet has no services?
 * const planned = planVisit({ sheet, log, today: '2031-10-06' }, { services: 'due', due, iso6789: '2017' })
 * planned.ok && planned.value.work.length // => 0
 * ```
 */
export function planVisit(facts: VisitFacts, options: VisitOptions): Result<VisitPlan, VisitCodes> {
  requireVisit(facts, options)
  const { sheet, stock, today, ambient, faults = [] } = facts
  const visitChoice = chooseVisit(facts, options)
  if (!visitChoice.ok) return visitChoice
  const { serviceLines, due, chosen, procedure = { steps: [] } } = visitChoice.value
  const { log } = resolveLog(facts.log, sheet)
  const countedFacts = { ...facts, log }
  const checkedToolbox = facts.toolbox && excludeReversedWrenches(facts.toolbox)
  const toolbox = checkedToolbox?.toolbox

  const ownProcedure = facts.procedure
  const procedureErrors =
    ownProcedure === undefined ? [] : visitChoice.findings.filter(({ severity }) => severity === 'error')

  const visitGearcases = groupByGearcase(chosen)
  const gearcases = visitGearcases.map(({ gearcase }) => gearcase)
  const changes = visitGearcases.filter(({ task }) => task === 'change')
  const partsWithoutSteps = listPartsWithoutSteps(sheet, gearcases, procedure)
  const figures = collectFigures(sheet, log.identity, gearcases, procedure, partsWithoutSteps)
  const visit: VisitContext = dropUndefined({
    sheet,
    identity: log.identity,
    toolbox,
    stock,
    ambient,
    procedure,
    partsWithoutSteps,
    figures,
  })
  const oil = planOil(visit, changes)
  const tighteningPlan = planTightenings(visit, options)
  const waits = planWaits(visit, oil)
  const filters = planFilters(visit)
  const { pan, usedOil, findings: panFindings } = planPan(visit, changes, oil)
  const vesselPlan = toolbox && planVessel(visit, oil.volumes, toolbox)
  const { steps, time, consumables, handTools } = planSteps(visit, tighteningPlan.tightenings, oil.oil, waits)
  const tools =
    toolbox === undefined
      ? []
      : [
          ...planTools(visit, toolbox),
          ...tighteningPlan.adaptors,
          ...(vesselPlan?.tools ?? []),
          ...waits.fillers,
        ]
  const machine = describeMachine(sheet, log)
  const missingDocuments = [
    ...(toolbox === undefined ? [serviceReason('service/no-toolbox', {})] : []),
    ...(stock === undefined ? [serviceReason('service/no-stock', {})] : []),
  ]
  const findings = [
    ...(checkedToolbox?.findings ?? []),
    ...reportVisit(visit, countedFacts, options.due, machine, due, tighteningPlan, tools),
    ...reportServicesNotOnMachine(sheet, options.services, serviceLines),
    ...visitChoice.findings,
    ...oil.findings,
    ...(toolbox === undefined ? [] : checkCalibration(toolbox, tighteningPlan.wrenches.use, today)),
    ...(vesselPlan?.findings ?? []),
    ...panFindings,
  ]
  const plan: VisitPlan = dropUndefined({
    kind: 'visit-plan',
    version: '1.0',
    machine,
    today,
    ambient,
    severity: options.due.severity,
    readings: readLatestReadings(log, today),
    due,
    work: chosen.map(({ service, serviceName, task, part, due: at }) => ({
      service,
      serviceName,
      task,
      part,
      due: at,
    })),
    procedure: ownProcedure && { id: ownProcedure.id, name: ownProcedure.name },
    figures: figures.figures,
    steps,
    lines: planLines(steps),
    oil: oil.oil,
    seals: planSeals(visit),
    filters: filters.length > 0 ? filters : undefined,
    tightenings: tighteningPlan.tightenings,
    tools,
    handTools,
    wrenches: tighteningPlan.wrenches,
    pan,
    waits: waits.waits,
    consumables: [
      ...consumables,
      ...planSamples(visit, countedFacts, serviceLines),
      ...listSheetSupplies(sheet, chosen, consumables),
    ],
    cautions: [
      ...faults.map(({ date, finding: { code, params } }) =>
        serviceReason('service/not-to-be-used', { signal: 'warning', date, fault: { code, params } }),
      ),
      ...judgeOilLoss({ sheet, log: facts.log, today })
        .filter(({ verdict }) => verdict === 'loses oil')
        .map(({ reasons }) =>
          serviceReason('service/loses-oil', {
            signal: 'warning',
            reasons: reasons.map(({ code, params }) => ({ code, params })),
          }),
        ),
      ...(procedureErrors.length > 0
        ? [serviceReason('service/procedure-errors', { count: procedureErrors.length, signal: 'warning' })]
        : []),
      serviceReason('service/manual-first', {}),
      serviceReason('service/licensed-work', {}),
      ...(changes.length > 0 ? [serviceReason('service/used-oil-rules', { signal: 'notice' })] : []),
    ],
    time: planTime(countedFacts, chosen, time, options.labourRate),
    usedOil,
    missing: listMissing(
      machine,
      due,
      figures.figures,
      [...listUnstated(visit, gearcases), ...tighteningPlan.missingSettings],
      waits.waits,
      chosen.length === 0 ? [] : missingDocuments,
    ),
    sources: figures.sources,
    warranty: sheet.warranty,
  })
  return { ok: true, value: plan, findings }
}

/** Findings for named services that do not apply to this machine. */
function reportServicesNotOnMachine(
  sheet: SpecSheet,
  services: VisitOptions['services'],
  serviceLines: readonly ServiceDue[],
): readonly Finding<ServiceCodes>[] {
  if (services === 'due') return []
  const document = { kind: 'spec-sheet', id: sheet.id } as const
  return [...new Set(services)]
    .filter((service) => !serviceLines.some((line) => line.service === service))
    .map((service) =>
      serviceFinding('service/service-not-on-machine', 'warning', document, `/services/${service}`, {
        service: sheet.services[service]?.name ?? service,
      }),
    )
}

/** Supplies that the sheet lists for the services and no step uses. */
function listSheetSupplies(
  sheet: SpecSheet,
  chosen: readonly ServiceDue[],
  listedSupplies: readonly Reason[],
) {
  const supplies = new Set(chosen.flatMap(({ service }) => sheet.services[service]?.supplies ?? []))
  return [...supplies]
    .filter((supply) => !listedSupplies.some(({ params }) => params['supply'] === supply))
    .map((supply) => serviceReason('service/supply', { supply }))
}
