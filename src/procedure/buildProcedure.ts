import type { DocumentReference, Finding, Result, Severity } from '../base/index.js'
import { dropUndefined, refuse, requireKnownKeys, requireShape } from '../base/index.js'
import {
  type Id,
  type Identity,
  type MachineEventKind,
  type ProcedureDocument,
  requireDocument,
  type ServiceOnPart,
  type SpecSheet,
} from '../spec/index.js'
import { type ChosenRamps, chooseRamps } from './build/chooseRamps.js'
import { writeOrderOfWork } from './build/orderOfWork.js'
import { chooseCheckPhase, isRechecked, needsRaising, type RampPosition } from './build/phases.js'
import { makeWriter } from './build/writer.js'
import { type CodeWithParams, type GearcaseParams, type ProcedureCodes, procedureFinding } from './codes.js'
import { indexSheet } from './indexSheet.js'
import { type GearcaseLayout, hasRole, type OpeningLayout } from './layout.js'
import { hasFiguresOnly, includesLevelCheck, listJobs, mustNotRun, type OilJob } from './listJobs.js'

/** The machine and the services that a procedure is written for. */
export interface BuildFacts {
  readonly sheet: SpecSheet
  readonly identity: Identity
  /** Services of one visit. */
  readonly services: readonly Id[]
  /** Restricts the services to these gearcases and instances; default: all. */
  readonly only?: readonly ServiceOnPart[]
  /** Events since the last oil change, such as `submersion`; default: none. */
  readonly events?: readonly MachineEventKind[]
  /** The way to raise the machine, if it must be raised; default: stands. */
  readonly raiseOn?: 'stands' | 'ramps'
}

export interface BuildOptions {
  /** Default: the sheet's id and the services' ids. */
  readonly id?: Id
  /** Default: the names of the machine and of the services on the sheet. */
  readonly name?: string
}

/**
 * Writes one safe order of work for all services of a visit. It lifts the machine once if possible, loosens
 * the fill plug before the drain plug, and closes everything with new seals. To check existing steps, use
 * {@link validateProcedure}.
 *
 * Method: takes steps from the table of actions, and tracks the state of the machine to choose the next step.
 * Gearcases reached from the ground come first, then those on stands, each in the order of the sheet.
 * @param facts The sheet, the known facts of the machine, and the services.
 * @param options Id and name of the procedure.
 * @returns The procedure with pointers to the figures of each step. Findings report parts that this machine
 *   may not have, a level without a stated attitude, and a second lift for a level check after the run. Not
 *   ok if a service is unknown, a gearcase cannot be emptied or filled, or supports for lifting are missing.
 * @throws TypeError for an argument of the wrong type or an unknown key, RangeError for an invalid id.
 *
 * Source: common practice, no source. The order of opening is a house rule, so that no machine is left drained with a
 * fill plug that cannot be loosened.
 * @example
 * import { buildProcedure } from 'drivetrain-service/v1/procedure'
 * const machine = { make: 'Invented', model: 'Example', type: 'carrier', variants: {}, axles: {}, supports: {} }
 * const sheet = { kind: 'spec-sheet', version: '1.0', id: 'example', revision: '1', machine, sources: {}, gearcases: {}, services: {} } as const
 * // Is a procedure written for a service that the sheet does not have?
 * buildProcedure({ sheet, identity: {}, services: ['oil'] }).ok // => false
 */
export function buildProcedure(
  facts: BuildFacts,
  options: BuildOptions = {},
): Result<ProcedureDocument, ProcedureCodes> {
  const shape = { identity: {}, services: ['string'], 'only?': [{}], 'events?': ['string'] } as const
  requireShape('facts', facts, shape, 'give a sheet, the known facts of the machine, and services')
  requireKnownKeys('facts', facts, ['sheet', 'identity', 'services', 'only', 'events', 'raiseOn'])
  requireShape('options', options, { 'id?': 'string', 'name?': 'string' }, 'omit unknown values')
  requireKnownKeys('options', options, ['id', 'name'])
  const { sheet, identity, services, only, events, raiseOn = 'stands' } = facts
  requireDocument('facts.sheet', sheet, 'spec-sheet')
  if (raiseOn !== 'stands' && raiseOn !== 'ramps')
    throw refuse('facts.raiseOn', raiseOn, "'stands' or 'ramps'", 'string')
  if (services.length === 0)
    throw new RangeError('facts.services must have at least one service id, got none')
  const id = options.id ?? [sheet.id, ...services].join('-').slice(0, 64)
  if (!/^[a-z][a-z0-9-]{0,63}$/.test(id))
    throw refuse('options.id', id, "a lower-case letter, then up to 63 of a-z, 0-9 and '-'", 'string')
  const indexedSheet = indexSheet(sheet, identity)
  const { jobs, findings: jobFindings } = listJobs(sheet, indexedSheet, { ...facts, id })
  const jobsWithSteps = jobs.filter((job) => !hasFiguresOnly(job))
  const ramps: ChosenRamps =
    raiseOn === 'ramps'
      ? chooseRamps(sheet, indexedSheet, jobsWithSteps, mustNotRun(events))
      : { axles: [], findings: [] }
  const affectedPaths = jobs.flatMap(({ emptiedInstances }) =>
    emptiedInstances.flatMap(({ gearcase }) => [
      gearcase.path,
      ...gearcase.shields.map((shield) => `/shields/${shield}`),
    ]),
  )
  const isAffected = ({ path }: Finding) =>
    affectedPaths.some((affectedPath) => path === affectedPath || path.startsWith(`${affectedPath}/`))
  const findings: readonly Finding<ProcedureCodes>[] = [
    ...jobFindings,
    ...indexedSheet.findings.filter(isAffected),
    ...jobs.flatMap((job) => findObstacles(job, { kind: 'spec-sheet', id: sheet.id }, ramps.onRamps)),
    ...ramps.findings,
  ]
  if (findings.some((finding) => finding.severity === 'error')) return { ok: false, findings }
  const knownServices = services.filter((service) => Object.hasOwn(sheet.services, service))
  const context = { indexedSheet, jobs: jobsWithSteps, mustNotRun: mustNotRun(events) }
  const writer = makeWriter({ sheet, identity, services: knownServices, ramps }, context)
  if (jobsWithSteps.length > 0 || jobs.length === 0) writeOrderOfWork(writer, jobsWithSteps)
  const names = knownServices.map((service) => sheet.services[service]?.name ?? service)
  const value: ProcedureDocument = dropUndefined({
    kind: 'procedure',
    version: '1.0',
    id,
    name: options.name ?? `${sheet.machine.make} ${sheet.machine.model}: ${names.join(', ')}`,
    sheet: { id: sheet.id, revision: sheet.revision },
    identity,
    services: [...services],
    only: only && [...only],
    events: events && [...events],
    steps: writer.steps,
  })
  return { ok: true, value, findings }
}

/** Finds the obstacles to a procedure for a job, and remarks on one that can be written. */
function findObstacles(
  job: OilJob,
  document: DocumentReference,
  onRamps: RampPosition,
): readonly Finding<ProcedureCodes>[] {
  const { gearcase } = job.owner
  const { name, oilSpace } = gearcase.gearcase
  const { fill } = gearcase
  const findings: Finding<ProcedureCodes>[] = []
  const addFinding = (
    code: CodeWithParams<GearcaseParams>,
    severity: Severity,
    at: string,
    of = gearcase,
    part = of.gearcase.name,
  ) => {
    const params = { part, gearcase: name }
    findings.push(procedureFinding(code, severity, document, `${of.path}${at}`, params))
  }
  if (oilSpace.kind === 'shared') addFinding('procedure/oil-owner-missing', 'error', '/oilSpace/with')
  const hasLevelCheck = includesLevelCheck(gearcase, job.task)
  const chooseSeverity = (severity: Severity) => (hasFiguresOnly(job) ? 'info' : severity)
  if (job.task === 'change') {
    if (gearcase.fillOpening === undefined)
      addFinding('procedure/no-fill-opening', chooseSeverity('error'), '/openings')
    if (gearcase.emptying === undefined)
      addFinding('procedure/no-way-to-empty', chooseSeverity('error'), '/emptying')
    const usesLevel = fill && fill.method.kind !== 'by quantity' && fill.method.kind !== 'not stated'
    if (usesLevel && gearcase.levelOpening === undefined)
      addFinding('procedure/no-level-opening', 'error', '/oilSpace/fill/method/opening')
  } else if (!hasLevelCheck)
    addFinding('procedure/no-level-opening', chooseSeverity('warning'), '/oilSpace/fill/method')
  if (!needsRaising(job)) {
    if (hasLevelCheck && fill?.level?.attitude === 'level on stands')
      addFinding('procedure/no-supports', 'error', '/access')
    const turningOpening = job.emptiedInstances
      .flatMap((emptiedInstance) => emptiedInstance.gearcase.openings)
      .find(({ opening }) => opening.uses.some((use) => use.wheelMark))
    if (turningOpening !== undefined)
      addFinding('procedure/wheel-on-the-ground', 'info', '/access', gearcase, turningOpening.opening.name)
  }
  for (const emptiedInstance of job.emptiedInstances)
    if (
      emptiedInstance.gearcase.gearcase.access.kind === 'raised' &&
      emptiedInstance.gearcase.supports.length === 0 &&
      !emptiedInstance.gearcase.areSupportsOnOtherAxle
    )
      addFinding('procedure/no-supports', 'error', '/access', emptiedInstance.gearcase)
  for (const candidate of job.task === 'change' ? job.emptiedInstances : [])
    for (const { opening, path } of listUnnamedDrains(candidate.gearcase))
      addFinding(
        'procedure/drain-left-out',
        'warning',
        path.slice(candidate.gearcase.path.length),
        candidate.gearcase,
        opening.name,
      )
  if (hasLevelCheck && (fill?.level === undefined || fill.level.attitude === 'not stated'))
    addFinding('procedure/attitude-not-stated', 'info', '/oilSpace/fill')
  if (isRechecked(job) && chooseCheckPhase(job, onRamps) !== 'before the lift')
    addFinding('procedure/second-lift', 'info', '/oilSpace/fill/level')
  return findings
}

/** Drain plugs that are missing from the `emptying` of their gearcase. */
function listUnnamedDrains({ gearcase, openings }: GearcaseLayout): readonly OpeningLayout[] {
  const named = gearcase.emptying.flatMap((way) =>
    way.kind === 'cover' ? [] : [way.opening, ...(way.kind === 'drain plug' ? (way.also ?? []) : [])],
  )
  return openings.filter(
    (opening) => hasRole(opening, 'drain') && opening.applies !== 'no' && !named.includes(opening.id),
  )
}
