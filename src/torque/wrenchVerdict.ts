import type { Reason } from '../base/index.js'
import type { Quantity, TorqueUnit } from '../quantity/index.js'
import type { Adaptor } from '../spec/index.js'

/** What a caller must say before a wrench is judged. */
export interface WrenchOptions {
  /**
   * Whose lower end of the range holds where the maker declares none: ISO 6789:2017 starts at the lowest marked
   * value, practice under the 2003 edition at 20 % of full scale.
   */
  readonly iso6789: '2017' | '2003'
  /** A tolerance for nominals that the manual prints bare, per cent, above 0 and below 100. */
  readonly tolerancePercent?: number
  /**
   * What is between wrench and fastener, as in a toolbox. The setting is corrected for a crowfoot's extension;
   * straight extensions and drive adaptors change nothing. Without a kind it counts as a crowfoot.
   */
  readonly adaptor?: Partial<Pick<Adaptor, 'kind' | 'extension'>> & {
    /** From straight ahead (0, the default) through square to the handle (90) to pointing back (180). */
    readonly angle?: Quantity<'deg'>
  }
}

export type Fit = 'fits' | 'fits with care' | 'does not fit' | 'cannot tell'

export interface TorqueBand {
  readonly min: Quantity<TorqueUnit>
  readonly max: Quantity<TorqueUnit>
}

/** One mark of one scale, and what the fastener truly gets. */
export interface TorqueSetting {
  /** Index in the wrench's `scales`. */
  readonly scale: number
  /** The mark, on that scale. */
  readonly setting: Quantity<TorqueUnit>
  /** Torque at the fastener when the wrench is true, in the sheet's unit; an adaptor is allowed for. */
  readonly atFastener: Quantity<TorqueUnit>
  /** Setting ÷ the scale's highest mark. */
  readonly shareOfFullScale: number
  readonly deviation: { readonly percent: number; readonly of: 'reading' | 'full scale' }
  /** Between which torques the fastener's true torque lies. */
  readonly trueBand: { readonly newtonMetres: TorqueBand; readonly sheetUnit: TorqueBand }
  /** Whether the whole true band is inside the stated band; `cannot tell` where no band is stated. */
  readonly trueBandInside: 'yes' | 'no' | 'cannot tell'
}

interface FitFacts {
  /** The band that the fastener must end in, in the sheet's unit; absent where none is stated. */
  readonly band?: TorqueBand & { readonly from: 'manual' | 'caller' }
  readonly reasons: readonly Reason[]
}

/** The verdict on one torque, the final one or a stage; where it fits, the setting is there. */
export type TorqueFit =
  | (FitFacts & { readonly verdict: 'fits' | 'fits with care'; readonly setting: TorqueSetting })
  | (FitFacts & { readonly verdict: 'does not fit' | 'cannot tell'; readonly setting?: undefined })

/** A wrench that covers a tightening. */
export type WrenchFits = Extract<WrenchVerdict, { readonly verdict: 'fits' | 'fits with care' }>

/** The verdict on a whole tightening: the worst of the final torque and the stages. */
export type WrenchVerdict = TorqueFit & {
  /** One for each stage, in order; empty without stages. */
  readonly stages: readonly TorqueFit[]
}
