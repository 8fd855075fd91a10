import type { Reason } from '../base/index.js'
import type { OilCodes } from './codes.js'

/** `not judged`: the manual requires nothing here, or the question omits it. */
export type AspectVerdict = 'yes' | 'no' | 'ask' | 'cannot tell' | 'not judged'

export interface JudgedAspect {
  readonly verdict: AspectVerdict
  readonly reasons: readonly Reason<keyof OilCodes>[]
}

export interface OilVerdict {
  /**
   * `no` when any aspect is no, else `cannot tell` when a fact is missing (a reason names it), else `ask` when the answer is
   * the maker's to give, else `yes`.
   */
  readonly verdict: 'yes' | 'no' | 'ask' | 'cannot tell'
  /** For a maker's fluid, viscosity and category both repeat the verdict on the name. */
  readonly viscosity: AspectVerdict
  readonly category: AspectVerdict
  readonly limitedSlip: AspectVerdict
  readonly ambient: AspectVerdict
  /** What decides first. */
  readonly reasons: readonly Reason<keyof OilCodes>[]
}
