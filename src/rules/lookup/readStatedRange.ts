import { findNearestDouble, getStatedEnds, measureOf, readBand, type Unit } from '../../quantity/index.js'
import type { StatedValue } from '../../spec/index.js'
import { hasFigure } from './hasFigure.js'

/**
 * The lowest and highest of the first printed figures of a stated value, in `unit`. Undefined without a
 * figure or for another measure; other rules report these.
 */
export function readStatedRange(value: StatedValue, unit: Unit) {
  if (measureOf(value.unit) !== measureOf(unit) || !hasFigure(value)) return undefined
  const { low, high } = getStatedEnds(readBand(value, unit))
  return { low: findNearestDouble(low), high: findNearestDouble(high) }
}
