import { compareQuantities } from '../../quantity/compareQuantities.js'
import type { Quantity, TorqueUnit } from '../../quantity/unit.js'
import type { TorqueWrench } from '../../spec/index.js'
import { defineRule } from '../rule.js'
import { lookUp } from '../walk/lookUp.js'
import { recordTightenings } from '../walk/recordTightenings.js'

/**
 * A torque said to be set with a wrench that has no such setting: above its highest or below its lowest mark, or outside the
 * range that its maker declares. The plug did not get that torque. Tighten it again with a wrench that reaches.
 * The ends of a scale belong to it. Source: ISO 6789 judges a wrench from its lowest marked value to its highest, as quoted by tool makers.
 */
export const wrenchCannotReach = defineRule({
  code: 'record/wrench-cannot-reach',
  severity: 'error',
  about: 'service-record',
  check: (record, set) =>
    recordTightenings(record, set).flatMap(({ path, done, part }) => {
      if (done.kind !== 'torque set') return []
      const wrench = set.toolboxes
        .map(({ document }) => lookUp(document.wrenches, done.tool))
        .find((found) => found !== undefined)
      if (wrench === undefined || canReach(wrench, done.torque)) return []
      const ranges = wrench.scales.map(({ lowest, highest, unit }) => ({ lowest, highest, unit }))
      return [{ path, params: { part, wrench: wrench.name, torque: { ...done.torque }, ranges } }]
    }),
})

function canReach(wrench: TorqueWrench, torque: Quantity<TorqueUnit>): boolean {
  const { declaredRange, scales } = wrench
  const isBetween = (min: Quantity<TorqueUnit>, max: Quantity<TorqueUnit>) =>
    compareQuantities(torque, min) >= 0 && compareQuantities(torque, max) <= 0
  if (declaredRange !== undefined && !isBetween(declaredRange.min, declaredRange.max)) return false
  return scales.some(({ lowest, highest, unit }) =>
    isBetween({ value: lowest, unit }, { value: highest, unit }),
  )
}
