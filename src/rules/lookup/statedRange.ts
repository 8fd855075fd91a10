import { measureOf, nearestDouble, readBand, statedEnds, type Unit } from '../../quantity/index.js'
import type { StatedValue } from '../../spec/index.js'
import { hasFigure } from './hasFigure.js'

/**
 * The lowest and the highest figure that a stated value names, in `unit`, to compare with limits of our own; undefined
 * where it has no figure or another measure, which rules of their own report.
 */
export function statedRange(value: StatedValue, unit: Unit) {
  if (measureOf(value.unit) !== measureOf(unit) || !hasFigure(value)) return undefined
  const { low, high } = statedEnds(readBand(value, unit))
  return { low: nearestDouble(low), high: nearestDouble(high) }
}
