import type { JsonPointer, Reason } from '../base/index.js'
import type { Identity } from './leaf.js'
import type { NotStated, SourceRef } from './specValue.js'

export type IdentityFact = keyof Identity

/** Whether a machine meets a condition; `missing` names the facts that would decide. */
export type Judgement =
  | { readonly verdict: 'yes'; readonly reasons: readonly Reason[] }
  | { readonly verdict: 'no'; readonly reasons: readonly Reason[] }
  | {
      readonly verdict: 'cannot tell'
      readonly missing: readonly IdentityFact[]
      readonly reasons: readonly Reason[]
    }

/**
 * The pointer of a resolved leaf in the sheet (in the base or in an override's `to`), and the reasons why it
 * applies.
 */
export interface Trace {
  readonly path: JsonPointer
  readonly source?: SourceRef
  readonly reasons: readonly Reason[]
}

/** A leaf of the sheet for exactly one machine. */
export type Resolved<T> =
  | { readonly kind: 'stated'; readonly value: Exclude<T, NotStated>; readonly trace: Trace }
  | { readonly kind: 'not stated'; readonly trace: Trace }
  | {
      readonly kind: 'cannot tell'
      readonly missing: readonly IdentityFact[]
      readonly candidates: readonly { readonly value: T; readonly trace: Trace }[]
    }
