import { measureOf, nearestDouble, readBand, statedEnds, type Unit } from '../../quantity/index.js'
import type { StatedValue } from '../../spec/index.js'
import { hasFigure } from './hasFigure.js'

/**
 * The lowest and highest of the first printed figures of a stated value, in `unit`. Undefined without a
 * figure or for another measure; other rules report these.
 */
export function readStatedRange(value: StatedValue, unit: Unit) {
  if (measureOf(value.unit) !== measureOf(unit) || !hasFigure(value)) return undefined
  const { low, high } = statedEnds(readBand(value, unit))
  return { low: nearestDouble(low), high: nearestDouble(high) }
}
