import { dropUndefined, type Finding, joinPointer } from '../base/index.js'
import {
  type Id,
  judgePart,
  type ProcedureDocument,
  type ServiceOnPart,
  type SpecSheet,
} from '../spec/index.js'
import { type ProcedureCodes, procedureFinding } from './codes.js'
import { findOwner, type GearcaseInstance, type IndexedSheet, keyOf } from './layout.js'
import type { OilJob } from './oilJob.js'

interface JobList {
  readonly jobs: readonly OilJob[]
  readonly findings: readonly Finding<ProcedureCodes>[]
}

/**
 * The oil spaces that the services of a procedure reach, in the sheet's own order of gearcases. Where one is both to
 * be checked and to be changed, the change holds.
 */
export function listJobs(
  sheet: SpecSheet,
  layout: IndexedSheet,
  { id, identity, services, only }: Pick<ProcedureDocument, 'id' | 'identity' | 'services' | 'only'>,
): JobList {
  const document = { kind: 'procedure', id } as const
  const findings: Finding<ProcedureCodes>[] = []
  const jobs = new Map<string, { -readonly [K in keyof OilJob]: OilJob[K] }>()
  const meant = new Set<ServiceOnPart>()
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
    for (const self of listInstances(layout, service.gearcases)) {
      const owner = findOwner(layout, self.gearcase, self.instance)
      const naming = only?.filter((one) => isMeant(one, serviceId, [self, owner]))
      if (naming?.length === 0) continue
      for (const one of naming ?? []) meant.add(one)
      const job = jobs.get(keyOf(owner)) ?? { owner, task: 'check', emptied: [owner], services: [] }
      jobs.set(keyOf(owner), job)
      if (service.task === 'change') job.task = 'change'
      if (!job.services.includes(serviceId)) job.services = [...job.services, serviceId]
      const isKnown = job.emptied.some((one) => keyOf(one) === keyOf(self))
      if (!isKnown && self.gearcase.emptying !== undefined) job.emptied = [...job.emptied, self]
    }
  }
  for (const [place, one] of (only ?? []).entries()) {
    if (meant.has(one)) continue
    const { service, gearcase, instance } = one
    const params = dropUndefined({ service, gearcase, instance })
    const path = joinPointer(['only', place])
    findings.push(procedureFinding('procedure/only-without-match', 'error', document, path, params))
  }
  const worked = [...jobs.values()].flatMap(({ emptied }) => emptied.map(({ gearcase }) => gearcase))
  for (const { path, gearcase, isLiftedElsewhere } of new Set(worked)) {
    if (!isLiftedElsewhere) continue
    const params = { part: gearcase.name, gearcase: gearcase.name }
    const at = { kind: 'spec-sheet', id: sheet.id } as const
    const code = 'procedure/supports-on-another-axle'
    findings.push(procedureFinding(code, 'error', at, `${path}/access`, params))
  }
  const order = [...layout.gearcases.keys()]
  const sorted = [...jobs.values()].sort(
    ({ owner: first }, { owner: second }) =>
      order.indexOf(first.gearcase.id) - order.indexOf(second.gearcase.id) ||
      first.gearcase.instances.indexOf(first.instance) - second.gearcase.instances.indexOf(second.instance),
  )
  return { jobs: sorted, findings }
}

/** The instances of these gearcases that this machine has or may have. */
function listInstances(layout: IndexedSheet, gearcases: readonly Id[]): readonly GearcaseInstance[] {
  return gearcases.flatMap((id) => {
    const gearcase = layout.gearcases.get(id)
    if (gearcase === undefined || gearcase.applies === 'no') return []
    return gearcase.instances.map((instance) => ({ gearcase, instance }))
  })
}

/** A gearcase that the list does not name goes with the one whose oil it shares. */
function isMeant(one: ServiceOnPart, service: Id, instances: readonly GearcaseInstance[]): boolean {
  return (
    one.service === service &&
    instances.some(
      ({ gearcase, instance }) =>
        gearcase.id === one.gearcase && (one.instance === undefined || one.instance === instance),
    )
  )
}
