import {
  compareExact,
  type Exact,
  measureOf,
  nearestQuantity,
  readBand,
  statedEnds,
} from '../../quantity/index.js'
import type { SpecValue } from '../../spec/index.js'
import { hasFigure } from './hasFigure.js'
import type { ValuePair } from './indexSheet.js'

/**
 * The lowest and the highest amount that a stated volume names, exact in millilitres; undefined where it is not stated,
 * is not a volume, or has no figure.
 */
export function statedVolume(value: SpecValue | undefined) {
  if (value === undefined || value.kind === 'not stated' || measureOf(value.unit) !== 'volume')
    return undefined
  return hasFigure(value) ? statedEnds(readBand(value, 'mL')) : undefined
}

/** Of pairs of volumes, those whose first is larger for certain: its low end, the other's high end, and the place. */
export const findLarger = (pairs: readonly ValuePair[]) =>
  pairs.flatMap(({ path, one, other }) => {
    const low = statedVolume(one)?.low
    const high = statedVolume(other)?.high
    if (low === undefined || high === undefined || compareExact(low, high) <= 0) return []
    return [{ path, low: millilitres(low), high: millilitres(high) }]
  })

/** A compared volume as findings show it. */
export const millilitres = (volume: Exact) => nearestQuantity(volume, 'mL', 'mL')
