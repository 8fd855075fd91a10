import type { JsonPointer } from '../base/index.js'
import type { OnceShot, SceneKind } from '../message/index.js'
import type { CardCaution, Line } from './cardParts.js'

/** One camera shot of a scene. */
export interface CueShot {
  readonly text: string
  /** Why the shot cannot be repeated; absent: it can. */
  readonly once?: OnceShot
  /** Whether a wait follows that is cut. */
  readonly isCut?: true
}

/** Sentences that are spoken together. */
export interface CueSpeech {
  readonly kind: 'caution' | 'place' | 'step'
  /** All values are in words. */
  readonly text: string
  readonly from: JsonPointer
}

/** A scene of a presenter's script. */
export interface Cue {
  /** `opening`, `interval`, `tools`, `variants`, or the id of the first step. */
  readonly id: string
  readonly kind: SceneKind
  readonly title: Line
  readonly shots: readonly CueShot[]
  /** In order; a caution is before its action. */
  readonly say: readonly CueSpeech[]
  /** The cautions to keep on the screen during the scene. */
  readonly hold: readonly CardCaution[]
  /** The variant and its figures as the manual prints them, with pointers into the plan. */
  readonly screen: readonly Line[]
  readonly from: JsonPointer
  /** Speaking time in whole seconds. */
  readonly seconds: number
}
