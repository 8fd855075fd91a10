import { type Exact, measureOf, nearestQuantity, readBand, statedEnds } from '../../quantity/index.js'
import type { SpecValue } from '../../spec/index.js'
import { hasFigure } from './hasFigure.js'

/** The lowest and the highest amount that a stated volume names, exact in millilitres. */
export interface StatedVolume {
  readonly low: Exact
  readonly high: Exact
}

/** Reads a volume for a comparison; undefined where it is not stated, is no volume, or has no figure. */
export function statedVolume(value: SpecValue | undefined): StatedVolume | undefined {
  if (value === undefined || value.kind === 'not stated' || measureOf(value.unit) !== 'volume')
    return undefined
  return hasFigure(value) ? statedEnds(readBand(value, 'mL')) : undefined
}

/** A compared volume as findings show it. */
export const millilitres = (volume: Exact) => nearestQuantity(volume, 'mL', 'mL')
