import { measureOf, nearestDouble, readBand, statedEnds, type Unit } from '../../quantity/index.js'
import type { StatedValue } from '../../spec/index.js'
import { hasFigure } from './hasFigure.js'

/**
 * The lowest and the highest first printed figure of a stated value, in `unit`. Undefined for a value without a figure or
 * of another measure, which other rules report.
 */
export function readStatedRange(value: StatedValue, unit: Unit) {
  if (measureOf(value.unit) !== measureOf(unit) || !hasFigure(value)) return undefined
  const { low, high } = statedEnds(readBand(value, unit))
  return { low: nearestDouble(low), high: nearestDouble(high) }
}
