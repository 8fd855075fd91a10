import type { PrintedBand, Unit } from '../quantity/index.js'

/** Numbers and units in words, for a voice. */
export interface SpeechWords {
  /** A decimal numeral in words, digit by digit behind the mark: `10.0` is `ten point zero`. */
  readonly numeral: (digits: string) => string
  /** `eight point nine pound-feet` */
  readonly quantity: (digits: string, unit: Unit) => string
  /** `two to three`, around two numerals in words. */
  readonly range: (from: string, to: string) => string
  /** A printed figure, a figure with its tolerance, or limits. */
  readonly band: (value: PrintedBand) => string
  /** A time of whole seconds. */
  readonly duration: (seconds: number) => string
}
