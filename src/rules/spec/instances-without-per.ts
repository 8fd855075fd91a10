import { gearcaseRule } from '../ruleMakers.js'

/**
 * A gearcase with several instances, such as left and right, whose quantity does not say whether it is for
 * one or for all. Half or twice the oil would be bought and poured.
 * Judges: Every gearcase with two or more `instances` and its own oil. Finds a `fill` without `per`.
 * Place: `/gearcases/<id>/oilSpace/fill`
 * Params: gearcase: its name; count: number of instances
 * Harm: machine
 * House rule.
 */
export const rule = gearcaseRule(
  'spec/instances-without-per',
  'error',
  ([id, { name, instances, oilSpace }]) => {
    const count = Object.keys(instances ?? {}).length
    if (count < 2 || oilSpace.kind === 'shared' || oilSpace.fill.per !== undefined) return []
    return [{ path: `/gearcases/${id}/oilSpace/fill`, params: { gearcase: name, count } }]
  },
)
