import type { Condition, DriveOnPart, PlaceOnMachine, Tightening } from './leaf.js'
import type { NumberedPart, Seal } from './seal.js'
import type { Id } from './specValue.js'

/** A filter or strainer in the oil of a gearcase. The oil that stays in it is not judged: the manual's refill includes it. */
export interface Filter extends NumberedPart {
  /** The name in plain words: `return filter`. */
  readonly name: string
  /** Only machines that meet this have the filter; absent: all. */
  readonly appliesTo?: Condition
  /** What it is. */
  readonly kind: 'spin-on filter' | 'cartridge filter' | 'strainer'
  /** What holds it. */
  readonly held: FilterHold
  /** Rings and gaskets of the filter, not those of a cover or plug in front of it. */
  readonly seals: readonly Seal[]
  /** What the manual does at an oil change; `not stated`: a strainer is cleaned, a filter renewed. */
  readonly change: 'every change' | 'clean every change' | 'not stated'
  /** Where it is. */
  readonly place: PlaceOnMachine
}

/** What holds a filter: its own thread, or a plug or cover in front of it. */
export type FilterHold =
  /** By its own thread; `turns` count from the contact of its ring. */
  | {
      readonly kind: 'screwed'
      /** The designation as printed: `M20x1.5`; absent: not stated. */
      readonly thread?: string
      /** What turns it. */
      readonly drive: DriveOnPart
      /** How tight it is: `0.75 turns`. */
      readonly tightening: Tightening
    }
  /** A plug or cover holds it; it comes out once that is removed. */
  | {
      readonly kind: 'behind opening'
      /** The id of the opening in front of it: `drain`. */
      readonly opening: Id
    }
  | {
      readonly kind: 'behind cover'
      /** The id of the cover in front of it: `pan`. */
      readonly cover: Id
    }
