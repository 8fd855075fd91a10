import { compareQuantities } from '../../quantity/index.js'
import { wrenchRule } from '../ruleMakers.js'

/**
 * A torque wrench whose declared range ends at or before its start. The two figures were swapped.
 * Judges: Every wrench with `declaredRange`. Finds `min` at or above `max`, converted exactly.
 * Place: `/wrenches/<id>/declaredRange`
 * Params: wrench: its name; min: as written; max: as written
 * Harm: job
 * House rule.
 */
export const rule = wrenchRule(
  'toolbox/declared-range-reversed',
  'error',
  ([id, { name, declaredRange }]) => {
    if (declaredRange === undefined) return []
    const { min, max } = declaredRange
    if (compareQuantities(min, max) < 0) return []
    const path = `/wrenches/${id}/declaredRange`
    const fixes = [{ op: 'replace' as const, path, value: { min: max, max: min } }]
    return [{ path, params: { wrench: name, min: { ...min }, max: { ...max } }, cures: fixes }]
  },
)
