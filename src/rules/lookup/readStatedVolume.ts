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
 * The low and the high end of a stated volume, exact in millilitres. Undefined if it is not stated, is not a volume, or
 * has no figure.
 */
export function readStatedVolume(value: SpecValue | undefined) {
  if (value === undefined || value.kind === 'not stated' || measureOf(value.unit) !== 'volume')
    return undefined
  return hasFigure(value) ? statedEnds(readBand(value, 'mL')) : undefined
}

/** Finds the pairs whose first volume is certainly larger: its low end exceeds the high end of the other. */
export const findLargerVolumes = (pairs: readonly ValuePair[]) =>
  pairs.flatMap(({ path, one, other }) => {
    const low = readStatedVolume(one)?.low
    const high = readStatedVolume(other)?.high
    if (low === undefined || high === undefined || compareExact(low, high) <= 0) return []
    return [{ path, low: toMillilitres(low), high: toMillilitres(high) }]
  })

/** A volume as params show it. */
export const toMillilitres = (volume: Exact) => nearestQuantity(volume, 'mL', 'mL')
