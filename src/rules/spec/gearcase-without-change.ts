import { gearcaseRule } from '../ruleMakers.js'

/**
 * A gearcase with its own oil that no service changes. A service does not list it, so its oil would never be
 * due.
 * Judges: Every gearcase with its own oil, on a sheet with a service with the task `change`. Finds one that
 * no such service names under `gearcases`.
 * Place: `/gearcases/<id>`
 * Params: gearcase: its name
 * Harm: machine
 * Common practice, no source. Waive the finding if the gearcase is filled for life.
 */
export const rule = gearcaseRule(
  'spec/gearcase-without-change',
  'warning',
  ([id, { name, oilSpace }], { document }) => {
    const changes = Object.values(document.services).filter(({ task }) => task === 'change')
    if (oilSpace.kind === 'shared' || changes.length === 0) return []
    if (changes.some(({ gearcases }) => gearcases.includes(id))) return []
    return [{ path: `/gearcases/${id}`, params: { gearcase: name } }]
  },
)
