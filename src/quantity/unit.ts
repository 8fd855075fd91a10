/** The units of documents and functions, by measure. Torque is a measure of its own, never an energy. */
export const UNITS_BY_MEASURE = {
  torque: ['N.m', 'cN.m', 'dN.m', 'kN.m', 'lbf.ft', 'lbf.in', 'ozf.in', 'kgf.m', 'kgf.cm'],
  volume: [
    'mL',
    'L',
    'cm3',
    'fl_oz_us',
    'pt_us',
    'qt_us',
    'gal_us',
    'fl_oz_imp',
    'pt_imp',
    'qt_imp',
    'gal_imp',
  ],
  length: ['mm', 'cm', 'm', 'in', 'ft'],
  distance: ['km', 'mi'],
  force: ['N', 'kN', 'lbf'],
  pressure: ['kPa', 'MPa', 'bar', 'psi'],
  temperature: ['degC', 'degF', 'K'],
  temperatureDifference: ['degC_diff', 'degF_diff', 'K_diff'],
  mass: ['g', 'kg', 'oz', 'lb'],
  duration: ['h', 'min', 's', 'd'],
  angle: ['deg'],
  speed: ['km/h', 'mph'],
  kinematicViscosity: ['mm2/s'],
  dynamicViscosity: ['mPa.s'],
  density: ['kg/m3'],
} as const

export type Measure = keyof typeof UNITS_BY_MEASURE
export type UnitOf<M extends Measure> = (typeof UNITS_BY_MEASURE)[M][number]
export type Unit = UnitOf<Measure>

export type TorqueUnit = UnitOf<'torque'>
export type VolumeUnit = UnitOf<'volume'>
export type LengthUnit = UnitOf<'length'>
export type DistanceUnit = UnitOf<'distance'>
export type ForceUnit = UnitOf<'force'>
export type TemperatureUnit = UnitOf<'temperature'>
export type MassUnit = UnitOf<'mass'>
export type DurationUnit = UnitOf<'duration'>

/** A computed or measured quantity. Where it is compared or summed, the number means its shortest decimal. */
export interface Quantity<U extends Unit = Unit> {
  readonly value: number
  readonly unit: U
}

/**
 * A figure as a manual prints it: a decimal string with its printed digits, since `10.0` and `10` say different
 * things. Grammar `^(0|[1-9][0-9]{0,8})(\.[0-9]{1,6})?$`, at most 15 significant digits; a temperature may carry a minus.
 */
export type Figure = string

/** A printed figure with its unit. */
export interface PrintedQuantity<U extends Unit = Unit> {
  readonly value: Figure
  readonly unit: U
}
