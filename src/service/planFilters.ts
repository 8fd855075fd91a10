import { dropUndefined, type JsonPointer, readPointer } from '../base/index.js'
import type { Filter } from '../spec/index.js'
import type { ServiceDue } from './listDue.js'
import { describePart } from './names.js'
import type { GearcaseInVisit, VisitContext } from './visitContext.js'
import type { PlannedFilter } from './visitPlan.js'

/** The new filters of a visit with their counts. A stock has no filters, so all are bought. */
export function planFilters({ sheet, procedure }: VisitContext): readonly PlannedFilter[] {
  const fitted = new Map<JsonPointer, number>()
  for (const { do: action, on } of procedure.steps)
    if (action === 'fit filter' && on !== undefined) fitted.set(on, (fitted.get(on) ?? 0) + 1)
  for (const { do: action, on } of procedure.steps)
    if (action === 'clean the filter' && on !== undefined) fitted.delete(on)
  return [...fitted].flatMap(([path, count]): PlannedFilter | readonly [] => {
    const filter = readPointer(sheet, path) as Filter | undefined
    if (filter === undefined) return []
    const { kind, partNumber, supersededBy } = filter
    return dropUndefined({ part: describePart(sheet, path), kind, partNumber, supersededBy, count })
  })
}

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
