import { dropUndefined, type Reason } from '../base/index.js'
import { type Id, type Identity, judgePart, type SpecSheet } from '../spec/index.js'
import { serviceReason } from './codes.js'
import { listInstances } from './gearcases.js'
import { describePart, type PartName } from './names.js'

/** A service of a machine on one gearcase and instance. */
export interface ServiceOnGearcase {
  readonly service: Id
  readonly serviceName: string
  readonly task: 'check' | 'change'
  readonly gearcase: Id
  readonly part: PartName
  /** Whether this machine has the service or the gearcase is not known, for these reasons. Empty: it has both. */
  readonly unknownReasons: readonly Reason[]
}

/**
 * Lists the services of a machine on every gearcase and instance that it has or may have, in the order of the
 * sheet. A gearcase that shares the oil of another is not listed; the service of the owner counts.
 */
export function listServiceParts(sheet: SpecSheet, identity: Identity): readonly ServiceOnGearcase[] {
  return Object.entries(sheet.services).flatMap(([service, { name: serviceName, task, gearcases }]) => {
    const serviceApplies = judgePart(sheet, identity, `/services/${service}`)
    if (serviceApplies.verdict === 'no') return []
    return [...new Set(gearcases)].flatMap((gearcase) => {
      const path = `/gearcases/${gearcase}`
      if (!Object.hasOwn(sheet.gearcases, gearcase)) return []
      const applies = judgePart(sheet, identity, path)
      if (applies.verdict === 'no' || sheet.gearcases[gearcase]?.oilSpace.kind === 'shared') return []
      return listInstances(sheet, gearcase).map((instance): ServiceOnGearcase => {
        const part = describePart(sheet, path, dropUndefined({ instance }))
        const unknownReasons = [serviceApplies, applies].flatMap((judgement): Reason | readonly [] =>
          judgement.verdict === 'cannot tell'
            ? serviceReason('service/part-not-known', { part, facts: judgement.missing })
            : [],
        )
        return { service, serviceName, task, gearcase, part, unknownReasons }
      })
    })
  })
}
