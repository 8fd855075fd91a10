import type { ServiceDue } from './listDue.js'
import type { GearcaseInVisit } from './visitContext.js'

/** The gearcases of chosen services, in their order, each with its instances. */
export function groupByGearcase(
  chosen: readonly Pick<ServiceDue, 'gearcase' | 'part' | 'task'>[],
): readonly GearcaseInVisit[] {
  return [...new Set(chosen.map(({ gearcase }) => gearcase))].map((gearcase) => {
    const lines = chosen.filter((line) => line.gearcase === gearcase)
    const instances = new Set(lines.map(({ part }) => part.instance?.id))
    const task = lines.some((line) => line.task === 'change') ? 'change' : 'check'
    return { gearcase, task, instances: [...instances] }
  })
}
