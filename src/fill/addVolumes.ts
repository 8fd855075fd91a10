import { type Exact, exactIn, nearestQuantity, plus, type Quantity } from '../quantity/index.js'
import type { VolumeAmount } from './volumeAmount.js'

/** The exact sum of volumes in any units, rounded once. */
export function addVolumes(volumes: readonly VolumeAmount[]): Quantity<'mL'> {
  const sum = volumes.reduce((all: Exact, next) => plus(all, exactIn(next, 'mL')), { n: 0n, d: 1n })
  return nearestQuantity(sum, 'mL', 'mL')
}
