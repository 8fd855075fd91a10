import { dropUndefined, type JsonPointer, readPointer } from '../base/index.js'
import type { Filter } from '../spec/index.js'
import { describePart } from './names.js'
import type { VisitContext } from './visitContext.js'
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
