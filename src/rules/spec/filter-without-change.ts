import { gearcaseRule } from '../ruleMakers.js'

/**
 * A filter that no oil change includes. Its gearcase shares the oil of another and is not emptied itself, so
 * no procedure includes the filter.
 * Judges: Every gearcase with `filters`, shared oil and an empty `emptying`, on a sheet with a service with
 * the task `change`. `spec/gearcase-without-change` reports gearcases with their own oil that no service
 * changes.
 * Place: `/gearcases/<id>/filters`
 * Params: gearcase: its name
 * Harm: machine
 * Common practice, no source.
 */
export const rule = gearcaseRule('spec/filter-without-change', 'warning', ([id, gearcase], { document }) => {
  const { name, oilSpace, emptying, filters = {} } = gearcase
  if (oilSpace.kind === 'own' || emptying.length > 0 || Object.keys(filters).length === 0) return []
  if (Object.values(document.services).every(({ task }) => task !== 'change')) return []
  return [{ path: `/gearcases/${id}/filters`, params: { gearcase: name } }]
})
