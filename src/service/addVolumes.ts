import { convert, type Quantity, type VolumeUnit } from '../quantity/index.js'

/** Adds volumes in millilitres. */
export function addVolumes(volumes: readonly Quantity<VolumeUnit>[]): Quantity<'mL'> {
  return { value: volumes.reduce((sum, volume) => sum + convert(volume, 'mL').value, 0), unit: 'mL' }
}
