import type { PrintedBand } from './printed.js'
import type { Measure, Unit } from './unit.js'

/** A known way to print a wrong second figure, by the ratio that gives it away. */
export type FigureSlip =
  | 'foot for inch'
  | 'kilogram-force for newton'
  | 'number copied between pound-foot and newton metre'
  | 'US for imperial measure'
  | 'US for imperial fluid ounce'

/** Every code of this room with its params. */
export interface QuantityCodes {
  'quantity/text-is-empty': Record<string, never>
  'quantity/text-is-too-long': { length: number; longest: number }
  'quantity/number-is-missing': { text: string }
  'quantity/number-is-unreadable': { text: string }
  'quantity/number-has-a-raised-digit': { text: string; without: string }
  'quantity/decimal-mark-is-unclear': { text: string; withPoint: string; withComma: string }
  'quantity/fraction-is-rounded': { text: string; value: string }
  'quantity/value-is-negative': { quantity: { value: string; unit: Unit } }
  'quantity/limits-are-reversed': { min: string; max: string }
  'quantity/unit-is-missing': { text: string }
  'quantity/unit-is-unknown': { text: string }
  'quantity/unit-is-ambiguous': { text: string; candidates: readonly Unit[] }
  'quantity/unit-is-a-ratio': { text: string; candidates: readonly Unit[] }
  'quantity/unit-is-another-case': { text: string; candidates: readonly Unit[] }
  'quantity/unit-is-mass-for-force': { text: string; unit: Unit }
  'quantity/unit-is-of-another-measure': { unit: Unit; measure: Measure }
  'quantity/text-is-left-over': { text: string }
  'quantity/printed-figures-miss': { first: PrintedBand; second: PrintedBand; missPercent: number }
  'quantity/printed-figures-slip': {
    first: PrintedBand
    second: PrintedBand
    slip: FigureSlip
    ratio: string
  }
  'quantity/printed-figures-differ': { first: PrintedBand; second: PrintedBand; missPercent: number }
  'quantity/printed-figures-not-comparable': { first: PrintedBand; second: PrintedBand }
}
