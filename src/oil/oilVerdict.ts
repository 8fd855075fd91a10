import type { Reason } from '../base/index.js'
import type { OilCodes } from './codes.js'

/** `not judged`: the manual requires nothing, or the caller gave no value to judge. */
export type AspectVerdict = 'yes' | 'no' | 'ask' | 'cannot tell' | 'not judged'

export interface JudgedAspect {
  readonly verdict: AspectVerdict
  readonly reasons: readonly Reason<keyof OilCodes>[]
}

export interface OilVerdict {
  /**
   * `no` if any aspect is no, else `cannot tell` if a fact is missing (a reason names it), else `ask` if only
   * the maker knows, else `yes`.
   */
  readonly verdict: 'yes' | 'no' | 'ask' | 'cannot tell'
  /** For a maker's fluid, viscosity and category are both the verdict on the name. */
  readonly viscosity: AspectVerdict
  readonly category: AspectVerdict
  readonly limitedSlip: AspectVerdict
  readonly ambient: AspectVerdict
  /** Deciding reasons come first. */
  readonly reasons: readonly Reason<keyof OilCodes>[]
}
