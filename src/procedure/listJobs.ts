import { dropUndefined, type Finding, joinPointer } from '../base/index.js'
import type {
  Id,
  MachineEventKind,
  ProcedureDocument,
  Service,
  ServiceOnPart,
  SpecSheet,
} from '../spec/index.js'
import { judgePart } from '../spec/index.js'
import { type ProcedureCodes, procedureFinding } from './codes.js'
import type { GearcaseInstance, GearcaseLayout, IndexedSheet } from './layout.js'
import { findOwner, makeInstanceKey } from './layout.js'

interface JobList {
  readonly jobs: readonly OilJob[]
  readonly findings: readonly Finding<ProcedureCodes>[]
}

/**
 * The jobs for the services of a procedure, one for each oil space, in the order of the sheet. If oil must be
 * both checked and changed, the job is the change.
 */
export function listJobs(
  sheet: SpecSheet,
  indexedSheet: IndexedSheet,
  { id, identity, services, only }: Pick<ProcedureDocument, 'id' | 'identity' | 'services' | 'only'>,
): JobList {
  const document = { kind: 'procedure', id } as const
  const findings: Finding<ProcedureCodes>[] = []
  const jobs = new Map<string, { -readonly [K in keyof OilJob]: OilJob[K] }>()
  const matchedItems = new Set<ServiceOnPart>()
  for (const [place, serviceId] of services.entries()) {
    const service = Object.hasOwn(sheet.services, serviceId) ? sheet.services[serviceId] : undefined
    if (service === undefined) {
      const params = { service: serviceId, known: Object.keys(sheet.services) }
      const path = joinPointer(['services', place])
      findings.push(procedureFinding('procedure/unknown-service', 'error', document, path, params))
      continue
    }
    const path = joinPointer(['services', serviceId])
    const onSheet = { kind: 'spec-sheet', id: sheet.id } as const
    const judged = judgePart(sheet, identity, path)
    if (judged.verdict === 'no') {
      const params = { service: service.name }
      findings.push(
        procedureFinding('procedure/service-not-for-this-machine', 'warning', onSheet, path, params),
      )
      continue
    }
    if (judged.verdict === 'cannot tell') {
      const params = { part: service.name, missing: [...judged.missing] }
      findings.push(procedureFinding('procedure/part-not-known', 'warning', onSheet, path, params))
    }
    for (const [index, sampled] of (service.samples ?? []).entries()) {
      const gearcase = indexedSheet.gearcases.get(sampled)
      const isPossible =
        service.task === 'change' &&
        service.gearcases.includes(sampled) &&
        gearcase?.emptying?.kind === 'drain plug'
      if (isPossible || gearcase?.applies === 'no') continue
      const at = joinPointer(['services', serviceId, 'samples', index])
      const params = { gearcase: gearcase?.gearcase.name ?? sampled, service: service.name }
      findings.push(procedureFinding('procedure/sample-not-possible', 'warning', onSheet, at, params))
    }
    for (const target of listInstances(indexedSheet, service.gearcases)) {
      const owner = findOwner(indexedSheet, target.gearcase, target.instance)
      const matchingItems = only?.filter((candidate) => matchesItem(candidate, serviceId, [target, owner]))
      if (matchingItems?.length === 0) continue
      for (const matchingItem of matchingItems ?? []) matchedItems.add(matchingItem)
      const job = jobs.get(makeInstanceKey(owner)) ?? {
        owner,
        task: 'check',
        emptiedInstances: [owner],
        sampledInstances: [],
        services: [],
      }
      jobs.set(makeInstanceKey(owner), job)
      if (service.task === 'change') job.task = 'change'
      if (!job.services.includes(serviceId)) job.services = [...job.services, serviceId]
      const isListed = job.emptiedInstances.some(
        (emptiedInstance) => makeInstanceKey(emptiedInstance) === makeInstanceKey(target),
      )
      if (!isListed && target.gearcase.emptying !== undefined)
        job.emptiedInstances = [...job.emptiedInstances, target]
      if (service.task === 'change' && takesSample(service, target))
        job.sampledInstances = [...job.sampledInstances, target]
    }
  }
  for (const [place, one] of (only ?? []).entries()) {
    if (matchedItems.has(one)) continue
    const { service, gearcase, instance } = one
    const params = dropUndefined({ service, gearcase, instance })
    const path = joinPointer(['only', place])
    findings.push(procedureFinding('procedure/only-without-match', 'error', document, path, params))
  }
  const emptiedGearcases = [...jobs.values()].flatMap(({ emptiedInstances }) =>
    emptiedInstances.map(({ gearcase }) => gearcase),
  )
  for (const { path, gearcase, areSupportsOnOtherAxle } of new Set(emptiedGearcases)) {
    if (!areSupportsOnOtherAxle) continue
    const params = { part: gearcase.name, gearcase: gearcase.name }
    const at = { kind: 'spec-sheet', id: sheet.id } as const
    const code = 'procedure/supports-on-another-axle'
    findings.push(procedureFinding(code, 'error', at, `${path}/access`, params))
  }
  const order = [...indexedSheet.gearcases.keys()]
  const sorted = [...jobs.values()].sort(
    ({ owner: first }, { owner: second }) =>
      order.indexOf(first.gearcase.id) - order.indexOf(second.gearcase.id) ||
      first.gearcase.instances.indexOf(first.instance) - second.gearcase.instances.indexOf(second.instance),
  )
  return { jobs: sorted, findings }
}

/** Whether the service requires an oil sample of this gearcase, and it has a drain plug. */
const takesSample = ({ samples = [] }: Service, { gearcase }: GearcaseInstance) =>
  samples.includes(gearcase.id) && gearcase.emptying?.kind === 'drain plug'

/** Instances of these gearcases, if this machine has or may have them. */
function listInstances(indexedSheet: IndexedSheet, gearcases: readonly Id[]): readonly GearcaseInstance[] {
  return gearcases.flatMap((id) => {
    const gearcase = indexedSheet.gearcases.get(id)
    if (gearcase === undefined || gearcase.applies === 'no') return []
    return gearcase.instances.map((instance) => ({ gearcase, instance }))
  })
}

/** Whether the item names one of these instances: a gearcase or the owner of its oil. */
function matchesItem(one: ServiceOnPart, service: Id, instances: readonly GearcaseInstance[]): boolean {
  return (
    one.service === service &&
    instances.some(
      ({ gearcase, instance }) =>
        gearcase.id === one.gearcase && (one.instance === undefined || one.instance === instance),
    )
  )
}

/** The work on one oil space. */
export interface OilJob {
  readonly owner: GearcaseInstance
  readonly task: 'check' | 'change'
  /** The owner first, then gearcases that share its oil and can be emptied. */
  readonly emptiedInstances: readonly GearcaseInstance[]
  /** The emptied instances that an oil sample is taken from. */
  readonly sampledInstances: readonly GearcaseInstance[]
  readonly services: readonly Id[]
}

export function findJob(jobs: readonly OilJob[], owner: GearcaseInstance): OilJob | undefined {
  return jobs.find(
    (job) => job.owner.gearcase.id === owner.gearcase.id && job.owner.instance === owner.instance,
  )
}

/** Whether this task includes a level check. */
export function includesLevelCheck(owner: GearcaseLayout, task: OilJob['task'] | undefined): boolean {
  if (owner.fill === undefined || owner.levelOpening === undefined) return false
  return owner.fill.method.kind !== 'by quantity' || task === 'check'
}

/**
 * Whether the sheet only gives figures for this job: it does not state the fill method or all openings for
 * the work. No procedure can be written then, which is not a mistake.
 */
export function hasFiguresOnly({ owner, task }: OilJob): boolean {
  const { fill, fillOpening, emptying, levelOpening } = owner.gearcase
  if (fill?.method.kind !== 'not stated') return false
  return task === 'change' ? fillOpening === undefined || emptying === undefined : levelOpening === undefined
}

const OIL_SPOILING_EVENTS: readonly MachineEventKind[] = [
  'submersion',
  'contamination',
  'seal failure',
  'oil loss',
]

/** Whether an event makes it unsafe to run the gears in the old oil. Common practice, no source. */
export function mustNotRun(events: readonly MachineEventKind[] = []): boolean {
  return events.some((event) => OIL_SPOILING_EVENTS.includes(event))
}
