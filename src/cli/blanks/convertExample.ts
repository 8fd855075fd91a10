import {
  convert,
  type DistanceUnit,
  type Quantity,
  type TemperatureUnit,
  type TorqueUnit,
  type Unit,
  type VolumeUnit,
} from '../../quantity/index.js'

/** The units of the examples in a blank document. */
export interface ExampleUnits {
  readonly torque: TorqueUnit
  readonly volume: VolumeUnit
  readonly distance: DistanceUnit
  readonly temperature: TemperatureUnit
}

/** The value of an example in another unit, with few digits. */
export function convertExample(unit: Unit, quantity: Quantity, digits = 2): number {
  return Number(convert(quantity, unit).value.toPrecision(digits))
}
