import type { Figure, Unit } from './unit.js'

/** A value as a manual prints it: one figure, a figure with its tolerance, or limits of which one may be missing. */
export type PrintedBand<U extends Unit = Unit> =
  | {
      readonly kind: 'nominal'
      /** The figure as text with the printed digits: `450`, `0.48`. */
      readonly value: Figure
      /** The unit, by its id in the unit table: `mL`, `N.m`. */
      readonly unit: U
      /** The figure as printed, if it is a fraction: `7 1/2` for `7.5`. */
      readonly asPrinted?: string
    }
  | {
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
      readonly kind: 'limits'
      /** The lowest permitted value: `20`. One of the two limits may be absent. */
      readonly min?: Figure
      /** The highest permitted value: `25`. One of the two limits may be absent. */
      readonly max?: Figure
      readonly unit: U
      readonly asPrinted?: string
    }
