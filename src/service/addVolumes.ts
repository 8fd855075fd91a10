import { amountIn, type Quantity, type VolumeUnit } from '../quantity/index.js'
import { addExactly } from './exactNumbers.js'

/** Adds volumes in millilitres. */
export function addVolumes(volumes: readonly Quantity<VolumeUnit>[]): Quantity<'mL'> {
  return { value: addExactly(volumes.map((volume) => amountIn(volume, 'mL').value)), unit: 'mL' }
}
