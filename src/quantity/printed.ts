import type { Figure, Unit } from './unit.js'

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
