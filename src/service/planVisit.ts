import type { Finding, Reason, Result } from '../base/index.js'
import { buildProcedure, type ProcedureCodes } from '../procedure/index.js'
import type { Id, MachineLog, ProcedureDocument, SpecSheet } from '../spec/index.js'
import { chooseWork } from './chooseWork.js'
import { type ServiceCodes, serviceFinding, serviceReason } from './codes.js'
import { collectFigures } from './collectFigures.js'
import { describeMachine, readLatest } from './describeMachine.js'
import { type ListedDue, listDue } from './listDue.js'
import { listMissing } from './listMissing.js'
import { planOil } from './planOil.js'
import { planPan } from './planPan.js'
import { planSeals } from './planSeals.js'
import { planSteps } from './planSteps.js'
import { planTightenings } from './planTightenings.js'
import { planTools } from './planTools.js'
import { planVessel } from './planVessel.js'
import { planWaits } from './planWaits.js'
import { reportVisit } from './reportVisit.js'
import { requireVisit, type VisitFacts, type VisitOptions } from './requireVisit.js'
import type { PlannedTool, VisitPlan } from './visitPlan.js'
import { checkCalibration, leaveOutWrenches } from './wrenchFindings.js'

/** What a plan can find: its own codes, and those of the procedure that it builds. */
export interface VisitCodes extends ServiceCodes, ProcedureCodes {}

/**
 * Plans one visit to one machine: what is due, the figures for exactly this variant, one order of work with one lift,
 * oil and seals to take and to buy, wrench settings, waits, cautions, and what is missing. For a list of what is due
 * alone use {@link listDue}; for a card of the plan use `cardModel` of the card room.
 *
 * A missing fact never stops the plan: its own line says `cannot tell` or `not stated`, and all that does not depend on
 * it is still answered.
 * @param facts - documents as their parse functions gave them, today, and the day's temperature
 * @param options - which services, and the caller's own judgement
 * @returns the plan, plain JSON, with findings about tools, shelf and log; not ok where the log belongs to another sheet,
 *   a service is not on the sheet, or no order of work can be written
 * @throws TypeError or RangeError for misuse, such as a `today` that is no date or an option that is unknown
 *
 * Source: house rule; each calculation names its own.
 * @example
 * ```ts
 * import { planVisit } from 'drivetrain-service/v1/service'
 * const machine = { make: 'Invented', model: 'Example', type: 'carrier', variants: { only: { name: 'Only' } }, axles: {}, supports: {} }
 * const sheet = { kind: 'spec-sheet', version: '1.0', id: 'example', revision: '1', machine, sources: {}, gearcases: {}, services: {} } as const
 * const log = { kind: 'machine-log', version: '1.0', id: 'one', name: 'One', sheet: { id: 'example', revision: '1' }, identity: {}, meters: {}, records: [] } as const
 * const due = { soon: {}, staleAfter: { days: 30 }, severity: 'normal' } as const
 * // What is to be done on a machine whose sheet has no service?
 * const planned = planVisit({ sheet, log, today: '2031-10-06' }, { services: 'due', due, iso6789: '2017' })
 * planned.ok && planned.value.work.length // => 0
 * ```
 */
export function planVisit(facts: VisitFacts, options: VisitOptions): Result<VisitPlan, VisitCodes> {
  requireVisit(facts, options)
  const { sheet, log, stock, today, ambient } = facts
  const { services } = options
  const refused = findMismatches(sheet, log, services)
  if (refused.length > 0) return { ok: false, findings: refused }
  const usable = facts.toolbox === undefined ? undefined : leaveOutWrenches(facts.toolbox)
  const toolbox = usable?.toolbox

  const listed = listDue({ sheet, log, today }, options.due)
  const work = chooseWork(sheet, listed, services)
  const chosen = listed.filter((_line, place) => work[place]?.taken)
  const due = listed.map(({ gearcase: _gearcase, ...line }, place) => ({
    ...line,
    taken: false,
    ...work[place],
  }))
  const built = buildFor(sheet, log, chosen)
  if (built !== undefined && !built.ok) return built
  const procedure = built?.value ?? emptyProcedure(sheet, log)

  const parts = groupByGearcase(chosen)
  const changes = parts.filter(({ task }) => task === 'change')
  const figures = collectFigures(
    sheet,
    log.identity,
    parts.map(({ gearcase }) => gearcase),
    procedure,
  )
  const oil = planOil({
    sheet,
    figures,
    changes,
    ...(ambient === undefined ? {} : { ambient }),
    ...(stock === undefined ? {} : { stock }),
  })
  const tightening = planTightenings({
    sheet,
    procedure,
    figures,
    iso6789: options.iso6789,
    ...(toolbox === undefined ? {} : { toolbox }),
    ...(options.tolerancePercent === undefined ? {} : { tolerancePercent: options.tolerancePercent }),
  })
  const waits = planWaits({
    sheet,
    procedure,
    figures,
    volumes: oil.volumes,
    pouredFrom: oil.pouredFrom,
    ...(ambient === undefined ? {} : { ambient }),
    ...(toolbox === undefined ? {} : { toolbox }),
  })
  const pan = planPan(sheet, changes, oil.volumes, toolbox)
  const vessel = toolbox === undefined ? undefined : planVessel(sheet, figures, oil.volumes, toolbox)
  const joined = planSteps({
    sheet,
    procedure,
    figures,
    tightenings: tightening.tightenings,
    oil: oil.oil,
    waits,
  })
  const tools: readonly PlannedTool[] =
    toolbox === undefined
      ? []
      : [
          ...planTools(sheet, procedure, figures, toolbox),
          ...tightening.adaptors,
          ...(vessel?.tools ?? []),
          ...waits.fillers,
        ]
  const machine = describeMachine(sheet, log)
  const notGiven: readonly Reason[] =
    chosen.length === 0
      ? []
      : [
          ...(toolbox === undefined ? [serviceReason('service/no-toolbox', {})] : []),
          ...(stock === undefined ? [serviceReason('service/no-stock', {})] : []),
        ]
  const findings = [
    ...(usable?.findings ?? []),
    ...reportVisit({ sheet, log, today, options: options.due, machine, due, tightening, tools, toolbox }),
    ...reportUnlisted(sheet, services, listed),
    ...(built?.findings ?? []),
    ...oil.findings,
    ...(toolbox === undefined ? [] : checkCalibration(toolbox, tightening.wrenches.use, today)),
    ...(vessel?.findings ?? []),
    ...pan.findings,
  ]
  const plan: VisitPlan = {
    kind: 'visit-plan',
    version: '1.0',
    machine,
    today,
    ...(ambient === undefined ? {} : { ambient }),
    severity: options.due.severity,
    readings: readLatest(log, today),
    due,
    work: chosen.map(({ service, serviceName, task, part }) => ({
      service,
      serviceName,
      task,
      part,
      due: `/due/${listed.findIndex((line) => line.service === service && line.part === part)}`,
    })),
    figures: figures.figures,
    steps: joined.steps,
    oil: oil.oil,
    seals: planSeals(sheet, procedure, figures, stock),
    tightenings: tightening.tightenings,
    tools,
    wrenches: tightening.wrenches,
    ...(pan.pan === undefined ? {} : { pan: pan.pan }),
    waits: waits.waits,
    consumables: joined.consumables,
    cautions: [
      serviceReason('service/manual-first', {}),
      serviceReason('service/licensed-work', {}),
      ...(changes.length > 0 ? [serviceReason('service/used-oil-rules', {})] : []),
    ],
    time: joined.time,
    usedOil: pan.usedOil,
    missing: listMissing({ machine, due, figures: figures.figures, waits: waits.waits, notGiven }),
    sources: figures.sources,
  }
  return { ok: true, value: plan, findings }
}

/** A log of another sheet, and services that the sheet does not know: nothing can be planned. */
function findMismatches(
  sheet: SpecSheet,
  log: MachineLog,
  services: VisitOptions['services'],
): readonly Finding<ServiceCodes>[] {
  const document = { kind: 'machine-log', id: log.id } as const
  if (log.sheet.id !== sheet.id || log.sheet.revision !== sheet.revision)
    return [
      serviceFinding('service/wrong-sheet', 'error', document, '/sheet', {
        required: log.sheet.id,
        revision: log.sheet.revision,
        given: sheet.id,
        givenRevision: sheet.revision,
      }),
    ]
  if (services === 'due') return []
  const known = Object.keys(sheet.services)
  return services
    .filter((service) => !known.includes(service))
    .map((service) =>
      serviceFinding(
        'service/service-not-on-sheet',
        'error',
        { kind: 'spec-sheet', id: sheet.id },
        '/services',
        {
          service,
          known,
        },
      ),
    )
}

/** Findings for services named by the caller that this machine does not have, by its variant or its other facts. */
function reportUnlisted(
  sheet: SpecSheet,
  services: VisitOptions['services'],
  listed: readonly ListedDue[],
): readonly Finding<ServiceCodes>[] {
  if (services === 'due') return []
  const document = { kind: 'spec-sheet', id: sheet.id } as const
  return [...new Set(services)]
    .filter((service) => !listed.some((line) => line.service === service))
    .map((service) =>
      serviceFinding('service/service-not-on-machine', 'warning', document, `/services/${service}`, {
        service: sheet.services[service]?.name ?? service,
      }),
    )
}

function buildFor(
  sheet: SpecSheet,
  log: MachineLog,
  chosen: readonly ListedDue[],
): ReturnType<typeof buildProcedure> | undefined {
  const services = [...new Set(chosen.map(({ service }) => service))]
  if (services.length === 0) return undefined
  return buildProcedure({
    sheet,
    identity: log.identity,
    services,
    only: chosen.map(({ service, gearcase, part }) => ({
      service,
      gearcase,
      ...(part.instance === undefined ? {} : { instance: part.instance.id }),
    })),
  })
}

function emptyProcedure(sheet: SpecSheet, log: MachineLog): ProcedureDocument {
  return {
    kind: 'procedure',
    version: '1.0',
    id: sheet.id,
    name: sheet.id,
    sheet: { id: sheet.id, revision: sheet.revision },
    identity: log.identity,
    services: [],
    steps: [],
  }
}

interface WorkedGearcase {
  readonly gearcase: Id
  readonly task: 'check' | 'change'
  readonly instances: readonly (Id | undefined)[]
}

function groupByGearcase(chosen: readonly ListedDue[]): readonly WorkedGearcase[] {
  const found = new Map<Id, { task: 'check' | 'change'; instances: Set<Id | undefined> }>()
  for (const { gearcase, task, part } of chosen) {
    const entry = found.get(gearcase) ?? { task, instances: new Set() }
    if (task === 'change') entry.task = 'change'
    entry.instances.add(part.instance?.id)
    found.set(gearcase, entry)
  }
  return [...found].map(([gearcase, { task, instances }]) => ({ gearcase, task, instances: [...instances] }))
}
