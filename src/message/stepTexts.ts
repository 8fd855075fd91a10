import type { Action, Seal, WheelMark } from '../spec/index.js'

/**
 * What a step's text may name. Every string is ready to stand in a sentence; what is absent is not known or not asked
 * for, and the text does without it.
 */
export interface StepParams {
  /** `fill plug` */
  readonly part?: string
  /** `front differential`; absent where a heading above the step names it already. */
  readonly gearcase?: string
  /** `left` */
  readonly instance?: string
  readonly wheelMark?: WheelMark
  /** Where the part sits, in the manual's words. */
  readonly place?: string
  readonly seal?: Seal['kind']
  readonly sealant?: string
  /** `80W-90 GL-5` */
  readonly oil?: string
  /** `450 mL` */
  readonly volume?: string
  /** `34 N·m`, `30–38 N·m`; stages and a final angle are in it. */
  readonly torque?: string
  /** `2–3`, turns past finger tight. */
  readonly turns?: string
  /** Why there is no figure for this step. */
  readonly gap?: 'not stated' | 'cannot tell'
  readonly wrench?: string
  /** What the wrench is set to, on its own scale. */
  readonly setting?: string
  /** `about 4 min` */
  readonly wait?: string
  /** `30–50 °C` */
  readonly temperature?: string
  readonly additive?: string
}

/** The texts of one action. Each gets the same params, with values as printed or, for a voice, in words. */
export interface StepText {
  /** Whole sentences: one instruction each, at most 20 words, imperative. */
  readonly full: (params: StepParams) => string
  /** A few words for one who knows the job. */
  readonly short: (params: StepParams) => string
  /** What the camera shows while the step is spoken. */
  readonly show: (params: StepParams) => string
}

export type StepTexts = Readonly<Record<Action, StepText>>
