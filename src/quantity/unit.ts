import { FACTORS_BY_MEASURE } from './unitFactors.js'

type Factors = typeof FACTORS_BY_MEASURE
export type Measure = keyof Factors
export type UnitOf<M extends Measure> = keyof Factors[M]
export type Unit = { readonly [M in Measure]: UnitOf<M> }[Measure]

/** The units of documents and functions, by measure. Torque is a separate measure, not an energy. */
export const UNITS_BY_MEASURE = /* @__PURE__ */ listUnits()

/** The factor of every unit. */
export const UNIT_FACTORS: { readonly [U in Unit]: string } = /* @__PURE__ */ joinFactors()

function joinFactors() {
  return Object.assign({}, ...Object.values(FACTORS_BY_MEASURE))
}

function listUnits() {
  const lists = Object.entries(FACTORS_BY_MEASURE).map(([measure, factors]) => [
    measure,
    Object.keys(factors),
  ])
  return Object.fromEntries(lists) as { readonly [M in Measure]: readonly UnitOf<M>[] }
}

export type TorqueUnit = UnitOf<'torque'>
export type VolumeUnit = UnitOf<'volume'>
export type LengthUnit = UnitOf<'length'>
export type DistanceUnit = UnitOf<'distance'>
export type TemperatureUnit = UnitOf<'temperature'>
export type MassUnit = UnitOf<'mass'>

/** A computed or measured quantity. In comparisons and sums the number means its shortest decimal. */
export interface Quantity<U extends Unit = Unit> {
  /** The amount as a number. */
  readonly value: number
  /** The unit, by its id in the unit table: `mL`, `N.m`. */
  readonly unit: U
}

/**
 * A figure as a manual prints it: a decimal string with its printed digits, since `10.0` and `10` differ in
 * precision. Grammar `^(0|[1-9][0-9]{0,8})(\.[0-9]{1,6})?$`, at most 15 significant digits; a temperature may
 * have a minus sign.
 */
export type Figure = string

/** A printed figure with its unit. */
export interface PrintedQuantity<U extends Unit = Unit> {
  /** The figure as text with the printed digits: `2000`. */
  readonly value: Figure
  /** The unit, by its id in the unit table: `km`. */
  readonly unit: U
}

/** A value as a manual prints it: one figure, a figure with its tolerance, or one or two limits. */
export type PrintedBand<U extends Unit = Unit> =
  | {
      /** One figure. */
      readonly kind: 'nominal'
      /** The figure as text with the printed digits: `450`, `0.48`. */
      readonly value: Figure
      /** The unit, by its id in the unit table: `mL`, `N.m`. */
      readonly unit: U
      /** The text as printed, if it differs from the figure: `7 1/2`. */
      readonly asPrinted?: string
    }
  | {
      /** A figure with its tolerance. */
      readonly kind: 'nominal with tolerance'
      readonly value: Figure
      /** How far the value may be below the figure, in the same unit: `20`. */
      readonly minus: Figure
      /** How far the value may be above the figure, in the same unit: `20`. */
      readonly plus: Figure
      readonly unit: U
      readonly asPrinted?: string
    }
  | {
      /** Limits; one of them may be absent. */
      readonly kind: 'limits'
      /** The lowest permitted value: `20`. One of the two limits may be absent. */
      readonly min?: Figure
      /** The highest permitted value: `25`. One of the two limits may be absent. */
      readonly max?: Figure
      readonly unit: U
      readonly asPrinted?: string
    }
