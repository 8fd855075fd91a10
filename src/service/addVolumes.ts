import { convert, type Quantity, type VolumeUnit } from '../quantity/index.js'
import { shortNumber } from './shortNumber.js'

/** Adds volumes in millilitres. */
export function addVolumes(volumes: readonly Quantity<VolumeUnit>[]): Quantity<'mL'> {
  const sum = volumes.reduce((before, volume) => before + convert(volume, 'mL').value, 0)
  return { value: shortNumber(sum), unit: 'mL' }
}
