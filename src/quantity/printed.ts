import type { Figure, Unit } from './unit.js'

/** A value as a manual prints it: one figure, a figure with its tolerance, or limits of which one may be missing. */
export type PrintedBand<U extends Unit = Unit> =
  | { readonly kind: 'nominal'; readonly value: Figure; readonly unit: U; readonly asPrinted?: string }
  | {
      readonly kind: 'nominal with tolerance'
      readonly value: Figure
      readonly minus: Figure
      readonly plus: Figure
      readonly unit: U
      readonly asPrinted?: string
    }
  | {
      readonly kind: 'limits'
      readonly min?: Figure
      readonly max?: Figure
      readonly unit: U
      readonly asPrinted?: string
    }
