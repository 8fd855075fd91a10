import { lookUp } from '../lookup/lookUp.js'
import { gearcaseRule } from '../ruleMakers.js'

/**
 * A gearcase that shares the oil of a gearcase that itself shares oil, or its own oil. No gearcase owns the
 * oil, so the oil, its quantity and its due date are unknown. Name the owner directly.
 * Judges: Every gearcase with a shared oil space. Finds a `with` whose gearcase has a shared oil space too.
 * Place: `/gearcases/<id>/oilSpace/with`
 * Params: gearcase: its name; with: name of the other gearcase
 * Harm: machine
 * House rule.
 */
export const rule = gearcaseRule(
  'spec/oil-space-chain',
  'error',
  ([id, { name, oilSpace }], { document }) => {
    if (oilSpace.kind !== 'shared') return []
    const owner = lookUp(document.gearcases, oilSpace.with)
    if (owner?.oilSpace.kind !== 'shared') return []
    return [{ path: `/gearcases/${id}/oilSpace/with`, params: { gearcase: name, with: owner.name } }]
  },
)
