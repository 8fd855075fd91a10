import type { FigureRole } from '../service/index.js'

/** The kinds of scenes, in the order of a film. */
export type SceneKind =
  | 'opening'
  | 'interval'
  | 'tools'
  | 'variants'
  | 'ready'
  | 'open'
  | 'inside'
  | 'fill'
  | 'check'
  | 'run'
  | 'closing'

/** Why a shot cannot be repeated. */
export type OnceShot = 'first crack' | 'first oil' | 'magnet'

type Words<Names extends string> = Readonly<Record<Names, string>>

/** All words of a cue sheet that do not come from the plan. They contain no digits. */
export interface CueWords {
  /** Above the machine's name. */
  readonly title: string
  /** The text instead of a camera shot, if a wait is not filmed. */
  readonly cut: string
  /** What is in the scene; for a scene on one gearcase after its name. */
  readonly scenes: Words<SceneKind>
  /** The camera shots of the scenes in which the presenter only speaks. */
  readonly shots: Words<'opening' | 'interval' | 'tools' | 'variants' | 'closing'>
  /** Marks of the shots that cannot be repeated. */
  readonly once: Words<OnceShot>
  readonly labels: Words<
    'show' | 'say' | 'screen' | 'hold' | 'setting' | 'stopAt' | 'missing' | 'scene' | 'time'
  >
  /** The headings of the scenes, of the list in filming order and of its groups. */
  readonly headings: Words<'scenes' | 'filming' | 'anyTime' | 'inOrder' | 'afterwards'>
  /** What a presenter says first, after the name of the machine. */
  readonly authority: readonly string[]
  readonly closing: readonly string[]
  /** Opens a film: the machine, its variant and the work. */
  readonly opening: (facts: {
    machine: string
    variant?: string
    work: readonly { readonly service: string; readonly parts: readonly string[] }[]
  }) => string
  /** Names the place of the work, and the variant whose figures follow. */
  readonly place: (facts: { part: string; variant?: string }) => string
  /** The limits of a service, of which the first that is reached decides. */
  readonly interval: (facts: { service: string; limits: readonly string[] }) => string
  readonly tools: (names: readonly string[]) => string
  readonly oil: (facts: { part: string; volume?: string; oil?: string }) => string
  readonly seals: (seals: readonly { readonly count: number; readonly kind: string }[]) => string
  /** The name of a figure inside a sentence: German keeps the capital of a noun. */
  readonly figure: (role: FigureRole) => string
  /** A figure of another variant; `role` as `figure` gives it. */
  readonly otherVariant: (facts: {
    variant: string
    role: string
    gearcase?: string
    part?: string
    value: string
  }) => string
  /** The text on the screen after a wait that was cut. */
  readonly later: (time: string) => string
}
