import { dropUndefined, type JsonPointer } from '../../base/index.js'
import { scaleInterval } from '../../interval/index.js'
import { type Id, type Identity, resolveLeaf, type Service, type SpecSheet } from '../../spec/index.js'
import type { ServiceOnGearcase } from '../listServiceParts.js'
import { describePart } from '../names.js'
import type { PlannedFigure } from '../visitPlan.js'
import type { WallInterval } from './wallFactsTypes.js'

/** The intervals of all services of a machine, with their figures; the first has the pointer `/figures/<start>`. */
export function listIntervals(
  sheet: SpecSheet,
  identity: Identity,
  services: readonly ServiceOnGearcase[],
  start: number,
): { readonly intervals: readonly WallInterval[]; readonly figures: readonly PlannedFigure[] } {
  const figures: PlannedFigure[] = []
  const addFigure = (service: Id, name: string): JsonPointer => {
    const path = `/services/${service}/intervals/${name}`
    const resolved = resolveLeaf(sheet, identity, 'interval', path)
    figures.push({ role: 'interval', leaf: 'interval', part: describePart(sheet, path), path, resolved })
    return `/figures/${start + figures.length - 1}`
  }
  const intervals = [...new Set(services.map(({ service }) => service))].map((service): WallInterval => {
    const own = services.filter((candidate) => candidate.service === service)
    const { name, task, intervals: stated, events = [] } = sheet.services[service] as Service
    const { severe } = stated
    const repeat = addFigure(service, 'repeat')
    const { resolved } = figures.at(-1) ?? {}
    return dropUndefined({
      service,
      serviceName: name,
      task,
      gearcases: [...new Set(own.map(({ gearcase }) => gearcase))].map((gearcase) =>
        describePart(sheet, `/gearcases/${gearcase}`),
      ),
      repeat,
      first: stated.first && addFigure(service, 'first'),
      severe:
        severe &&
        dropUndefined({
          criteria: severe.criteria,
          interval: severe.kind === 'interval' ? addFigure(service, 'severe/interval') : undefined,
          ...(severe.kind === 'factor' && {
            factor: severe.factor,
            scaled: resolved && scaleInterval(resolved, severe.factor),
          }),
        }),
      afterSubmersion: events.includes('submersion'),
    })
  })
  return { intervals, figures }
}
