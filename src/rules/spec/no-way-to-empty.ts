import { lookUp } from '../lookup/lookUp.js'
import { sheetRule } from '../ruleMakers.js'

/**
 * A gearcase whose oil is changed, but without a way to get the old oil out: no drain plug, cover or suction.
 * State a way, even if it is only suction.
 * Judges: Every gearcase with its own oil that a service with the task `change` names. Finds an empty
 * `emptying`. It is information if the fill method is `not stated`, since such a sheet only gives figures.
 * Place: `/gearcases/<id>/emptying`
 * Params: gearcase: its name
 * Harm: job
 * House rule.
 */
export const rule = sheetRule('spec/no-way-to-empty', 'error', ({ document }) => {
  const changedGearcases = new Set(
    Object.values(document.services).flatMap(({ task, gearcases }) => (task === 'change' ? gearcases : [])),
  )
  return [...changedGearcases].flatMap((id) => {
    const gearcase = lookUp(document.gearcases, id)
    if (gearcase === undefined || gearcase.oilSpace.kind === 'shared' || gearcase.emptying.length > 0)
      return []
    const found = { path: `/gearcases/${id}/emptying`, params: { gearcase: gearcase.name } }
    const { method } = gearcase.oilSpace.fill
    return method.kind === 'not stated' ? [{ ...found, severity: 'info' as const }] : [found]
  })
})
