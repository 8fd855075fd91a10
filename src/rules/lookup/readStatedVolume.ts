import type { Exact } from '../../quantity/index.js'
import {
  compareExact,
  findNearestQuantity,
  getStatedEnds,
  measureOf,
  readBand,
} from '../../quantity/index.js'
import type { SpecValue } from '../../spec/index.js'
import { hasFigure } from './hasFigure.js'
import type { ValuePair } from './indexSheet.js'

/**
 * The low and high ends of a stated volume in exact millilitres. Undefined if it is not stated, not a volume,
 * or has no figure.
 */
export function readStatedVolume(value: SpecValue | undefined) {
  if (value === undefined || value.kind === 'not stated' || measureOf(value.unit) !== 'volume')
    return undefined
  return hasFigure(value) ? getStatedEnds(readBand(value, 'mL')) : undefined
}

/** Finds pairs whose first volume is certainly larger: its low end exceeds the other's high end. */
export const findLargerVolumes = (pairs: readonly ValuePair[]) =>
  pairs.flatMap(({ path, one, other }) => {
    const low = readStatedVolume(one)?.low
    const high = readStatedVolume(other)?.high
    if (low === undefined || high === undefined || compareExact(low, high) <= 0) return []
    return [{ path, low: toMillilitres(low), high: toMillilitres(high) }]
  })

/** A volume for params, in millilitres. */
export const toMillilitres = (volume: Exact) => findNearestQuantity(volume, 'mL', 'mL')
