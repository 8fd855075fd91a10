import type { Measure, PrintedBand, Unit } from './unit.js'

/** A known mistake in a second printed figure, found by the ratio of the two. */
export type FigureSlip =
  | 'foot for inch'
  | 'kilogram-force for newton'
  | 'number copied between pound-foot and newton metre'
  | 'US for imperial measure'
  | 'US for imperial fluid ounce'

/** Codes of the quantity functions with their params. */
export interface QuantityCodes {
  'quantity/text-is-empty': Record<string, never>
  'quantity/text-is-too-long': { length: number; longest: number }
  'quantity/number-is-missing': { text: string }
  'quantity/number-is-unreadable': { text: string }
  'quantity/superscript-digit': { text: string; without: string }
  'quantity/decimal-mark-is-unclear': { text: string; withPoint: string; withComma: string }
  'quantity/fraction-is-rounded': { text: string; value: string }
  'quantity/value-is-negative': { quantity: { value: string; unit: Unit } }
  'quantity/limits-reversed': { min: string; max: string }
  'quantity/unit-is-missing': { text: string }
  'quantity/unit-is-unknown': { text: string }
  'quantity/unit-is-ambiguous': { text: string; candidates: readonly Unit[] }
  'quantity/ratio-of-units': { text: string; candidates: readonly Unit[] }
  'quantity/unit-in-wrong-case': { text: string; candidates: readonly Unit[] }
  'quantity/mass-unit-for-force': { text: string; unit: Unit }
  'quantity/unit-of-other-measure': { unit: Unit; measure: Measure }
  'quantity/text-after-quantity': { text: string }
  'quantity/printed-figures-differ-slightly': { first: PrintedBand; second: PrintedBand; missPercent: number }
  'quantity/printed-figures-slip': {
    first: PrintedBand
    second: PrintedBand
    slip: FigureSlip
    ratio: string
  }
  'quantity/printed-figures-differ': { first: PrintedBand; second: PrintedBand; missPercent: number }
  'quantity/printed-figures-not-comparable': { first: PrintedBand; second: PrintedBand }
}
