import { type Finding, type Result, requireShape, shown } from '../base/index.js'
import {
  type Id,
  type Identity,
  type ProcedureDocument,
  requireDocument,
  type ServiceOnPart,
  type SpecSheet,
} from '../spec/index.js'
import { findObstacles } from './build/obstacles.js'
import { writeOrderOfWork } from './build/orderOfWork.js'
import { startWriting } from './build/writer.js'
import { indexSheet } from './indexSheet.js'
import { listJobs } from './listJobs.js'

export interface BuildOptions {
  readonly sheet: SpecSheet
  readonly identity: Identity
  /** Services to be done at one visit, all taken into one order of work. */
  readonly services: readonly Id[]
  /** Only these of the services' gearcases and instances; default: all. */
  readonly only?: readonly ServiceOnPart[]
  /** Default: the sheet's id and the services' ids. */
  readonly id?: Id
  /** Default: the machine's and the services' names, as the sheet has them. */
  readonly name?: string
}

/**
 * Writes one safe order of work for all services of a visit, for a technician or a writer of cards: one lift, the
 * fill plug cracked before the drain plug is touched, everything opened closed again with new seals.
 * To check steps that somebody else wrote use {@link validateProcedure}.
 *
 * Equation: every step of the actions table is written where its needs hold; the state that it leads to decides the
 * next. Gearcases come in the sheet's own order, first those reached from the ground, then those on stands.
 * @param options Sheet, what is known of the machine, and the services.
 * @returns The procedure with pointers to the figures of each step; findings where a part cannot be told to be on
 * this machine, where the level's attitude is not stated, or where a second lift is needed to look at a level again
 * after the run. Not ok: an unknown service, no way to empty or to fill, no supports to lift at.
 * @throws TypeError for arguments of the wrong type, RangeError for an id that is none.
 *
 * Source: common practice, no source; the order of opening is a house rule, so that no machine is left drained with a
 * fill plug that will not move.
 * @example
 * import { buildProcedure } from 'drivetrain-service/v1/procedure'
 * const machine = { make: 'Invented', model: 'Example', type: 'carrier', variants: {}, axles: {}, supports: {} }
 * const sheet = { kind: 'spec-sheet', version: '1.0', id: 'example', revision: '1', machine, sources: {}, gearcases: {}, services: {} }
 * // What comes of a service that the sheet does not know?
 * buildProcedure({ sheet, identity: {}, services: ['oil'] }).ok // => false
 */
export function buildProcedure(options: BuildOptions): Result<ProcedureDocument> {
  if (typeof options !== 'object' || options === null) throw new TypeError('options: an object is wanted')
  const { sheet, identity, services } = options
  requireDocument('sheet', sheet, 'spec-sheet')
  if (typeof identity !== 'object' || identity === null)
    throw new TypeError('identity: an object is wanted; {} where nothing is known of the machine')
  if (!Array.isArray(services) || services.some((service) => typeof service !== 'string'))
    throw new TypeError('services: a list of service ids is wanted')
  if (options.only !== undefined)
    requireShape('only', options.only, [{}], 'a list of services and gearcases is wanted')
  if (services.length === 0) throw new RangeError('services: at least one service id is wanted, not none')
  const id = options.id ?? nameProcedure(sheet.id, services)
  if (typeof id !== 'string' || !/^[a-z][a-z0-9-]{0,63}$/.test(id))
    throw new RangeError(`id: a small letter, then up to 63 of a-z, 0-9 and '-' are wanted, not ${shown(id)}`)
  if (options.name !== undefined && typeof options.name !== 'string')
    throw new TypeError('name: a string is wanted')
  const layout = indexSheet(sheet, identity)
  const document = { kind: 'procedure', id } as const
  const { jobs, findings: jobFindings } = listJobs(sheet, layout, identity, services, document, options.only)
  const concerned = new Set(
    jobs.flatMap((job) =>
      job.units.flatMap(({ gearcase }) => [
        gearcase.path,
        ...gearcase.shields.map((one) => `/shields/${one}`),
      ]),
    ),
  )
  const findings: readonly Finding[] = [
    ...jobFindings,
    ...layout.findings.filter((finding) =>
      [...concerned].some((path) => finding.path === path || finding.path.startsWith(`${path}/`)),
    ),
    ...jobs.flatMap((job) => findObstacles(job, { kind: 'spec-sheet', id: sheet.id })),
  ]
  if (findings.some((finding) => finding.severity === 'error')) return { ok: false, findings }
  const known = services.filter((service) => Object.hasOwn(sheet.services, service))
  const writer = startWriting(sheet, { layout, jobs }, known)
  writeOrderOfWork(writer, jobs)
  const names = known.map((service) => sheet.services[service]?.name ?? service)
  return {
    ok: true,
    value: {
      kind: 'procedure',
      version: '1.0',
      id,
      name: options.name ?? `${sheet.machine.make} ${sheet.machine.model}: ${names.join(', ')}`,
      sheet: { id: sheet.id, revision: sheet.revision },
      identity,
      services: [...services],
      ...(options.only === undefined ? {} : { only: [...options.only] }),
      steps: writer.steps,
    },
    findings,
  }
}

function nameProcedure(sheet: Id, services: readonly Id[]): Id {
  return [sheet, ...services].join('-').slice(0, 64)
}
