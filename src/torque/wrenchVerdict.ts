import type { Reason } from '../base/index.js'
import type { Quantity, TorqueUnit } from '../quantity/index.js'
import type { Adaptor } from '../spec/index.js'

/** Options for judging a wrench. */
export interface WrenchOptions {
  /**
   * The edition that sets the lower end of the range if the maker declares no range: the lowest marked value in
   * ISO 6789:2017, 20 % of full scale in practice under the 2003 edition.
   */
  readonly iso6789: '2017' | '2003'
  /** A tolerance for nominals that the manual prints without one, per cent, above 0 and below 100. */
  readonly tolerancePercent?: number
  /**
   * The adaptor between wrench and fastener, in the form that a toolbox uses. The setting is corrected for the extension of a
   * crowfoot; straight extensions and drive adaptors need no correction. An adaptor without a kind is a
   * crowfoot.
   */
  readonly adaptor?: Partial<Pick<Adaptor, 'kind' | 'extension'>> & {
    /** 0 (the default): straight ahead; 90: square to the handle; 180: pointing back. */
    readonly angle?: Quantity<'deg'>
  }
}

export type Fit = 'fits' | 'fits with care' | 'does not fit' | 'cannot tell'

export interface TorqueBand {
  readonly min: Quantity<TorqueUnit>
  readonly max: Quantity<TorqueUnit>
}

/** The mark to set, and the resulting torque at the fastener. */
export interface TorqueSetting {
  /** Index in the wrench's `scales`. */
  readonly scale: number
  /** The mark, on that scale. */
  readonly setting: Quantity<TorqueUnit>
  /** Torque at the fastener if the wrench has no error, in the sheet's unit; the adaptor is included. */
  readonly atFastener: Quantity<TorqueUnit>
  /** Setting ÷ the scale's highest mark. */
  readonly shareOfFullScale: number
  readonly deviation: { readonly percent: number; readonly of: 'reading' | 'full scale' }
  /** The limits of the true torque at the fastener. */
  readonly trueBand: { readonly newtonMetres: TorqueBand; readonly sheetUnit: TorqueBand }
  /** Whether the whole true band is inside the stated band; `cannot tell` if no band is stated. */
  readonly trueBandInside: 'yes' | 'no' | 'cannot tell'
}

interface FitFacts {
  /** The required band in the sheet's unit; absent if no band is stated. */
  readonly band?: TorqueBand & { readonly from: 'manual' | 'caller' }
  readonly reasons: readonly Reason[]
}

/** The verdict on one torque, final or for a stage, with the setting if it fits. */
export type TorqueFit =
  | (FitFacts & { readonly verdict: 'fits' | 'fits with care'; readonly setting: TorqueSetting })
  | (FitFacts & { readonly verdict: 'does not fit' | 'cannot tell'; readonly setting?: undefined })

/** A wrench that covers a tightening. */
export type WrenchFits = Extract<WrenchVerdict, { readonly verdict: 'fits' | 'fits with care' }>

/** The verdict on a whole tightening: the worst of its final torque and stages. */
export type WrenchVerdict = TorqueFit & {
  /** One for each stage, in order; empty without stages. */
  readonly stages: readonly TorqueFit[]
}
