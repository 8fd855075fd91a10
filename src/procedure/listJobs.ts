import { type DocumentReference, type Finding, joinPointer } from '../base/index.js'
import { type Id, type Identity, judgePart, type ServiceOnPart, type SpecSheet } from '../spec/index.js'
import { findOwner, type GearcaseInstance } from './gearcaseInstance.js'
import type { Layout } from './layout.js'

/** What is to be done to one oil space: the owner's, with every gearcase that is emptied for it. */
export interface OilJob {
  readonly owner: GearcaseInstance
  readonly task: 'check' | 'change'
  /** The owner first, then gearcases that share its oil and have a way out of their own. */
  readonly units: readonly GearcaseInstance[]
  readonly services: readonly Id[]
}

export interface JobList {
  readonly jobs: readonly OilJob[]
  readonly findings: readonly Finding[]
}

/**
 * The oil spaces that the services reach, in the sheet's own order of gearcases. Where one is both to be checked and
 * to be changed, the change holds.
 */
export function listJobs(
  sheet: SpecSheet,
  layout: Layout,
  identity: Identity,
  services: readonly Id[],
  document: DocumentReference,
  only?: readonly ServiceOnPart[],
): JobList {
  const findings: Finding[] = []
  const jobs = new Map<
    string,
    { owner: GearcaseInstance; task: OilJob['task']; units: GearcaseInstance[]; services: Id[] }
  >()
  const order = [...layout.gearcases.keys()]
  const meant = new Set<ServiceOnPart>()
  for (const [place, id] of services.entries()) {
    const service = Object.hasOwn(sheet.services, id) ? sheet.services[id] : undefined
    if (service === undefined) {
      findings.push({
        code: 'procedure/unknown-service',
        severity: 'error',
        document,
        path: joinPointer(['services', place]),
        params: { service: id, known: Object.keys(sheet.services) },
      })
      continue
    }
    const judged = judgePart(sheet, identity, joinPointer(['services', id]))
    if (judged.answer !== 'yes')
      findings.push({
        code:
          judged.answer === 'no' ? 'procedure/service-not-for-this-machine' : 'procedure/part-cannot-be-told',
        severity: 'warning',
        document: { kind: 'spec-sheet', id: sheet.id },
        path: joinPointer(['services', id]),
        params:
          judged.answer === 'no'
            ? { service: service.name }
            : { part: service.name, missing: [...judged.missing] },
      })
    if (judged.answer === 'no') continue
    for (const gearcaseId of service.gearcases) {
      const gearcase = layout.gearcases.get(gearcaseId)
      if (gearcase === undefined || gearcase.applies === 'no') continue
      for (const instance of gearcase.instances) {
        const owner = findOwner(layout, gearcase, instance)
        const naming = only?.filter((one) => isMeant(one, id, [{ gearcase, instance }, owner]))
        if (naming?.length === 0) continue
        for (const one of naming ?? []) meant.add(one)
        const key = `${owner.gearcase.path}@${owner.instance ?? ''}`
        const job = jobs.get(key) ?? { owner, task: 'check', units: [owner], services: [] }
        jobs.set(key, job)
        if (service.task === 'change') job.task = 'change'
        if (!job.services.includes(id)) job.services.push(id)
        const unit = { gearcase, instance }
        const known = job.units.some((one) => one.gearcase.id === gearcase.id && one.instance === instance)
        if (!known && gearcase.emptying !== undefined) job.units.push(unit)
      }
    }
  }
  for (const [place, one] of (only ?? []).entries())
    if (!meant.has(one))
      findings.push({
        code: 'procedure/only-names-nothing',
        severity: 'error',
        document,
        path: joinPointer(['only', place]),
        params: {
          service: one.service,
          gearcase: one.gearcase,
          ...(one.instance === undefined ? {} : { instance: one.instance }),
        },
      })
  const sorted = [...jobs.values()].sort(
    (first, second) =>
      order.indexOf(first.owner.gearcase.id) - order.indexOf(second.owner.gearcase.id) ||
      first.owner.gearcase.instances.indexOf(first.owner.instance) -
        second.owner.gearcase.instances.indexOf(second.owner.instance),
  )
  return { jobs: sorted, findings }
}

/** A gearcase without a way of its own to say so goes with the one whose oil it shares. */
function isMeant(one: ServiceOnPart, service: Id, units: readonly GearcaseInstance[]): boolean {
  return (
    one.service === service &&
    units.some(
      ({ gearcase, instance }) =>
        gearcase.id === one.gearcase && (one.instance === undefined || one.instance === instance),
    )
  )
}
