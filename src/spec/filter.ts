import type { Condition, DriveOnPart, PlaceOnMachine, Tightening } from './leaf.js'
import type { NumberedPart, Seal } from './seal.js'
import type { Id } from './specValue.js'

/**
 * A filter or strainer in the oil of a gearcase. The oil left in it is not calculated separately: the
 * manual's refill includes it.
 */
export interface Filter extends NumberedPart {
  /** The name in plain words: `return filter`. */
  readonly name: string
  /** The machines that have the filter. Absent: all. */
  readonly appliesTo?: Condition
  /** The kind of filter. */
  readonly kind: 'spin-on filter' | 'cartridge filter' | 'strainer'
  /** How the filter is held. */
  readonly held: FilterHold
  /** Rings and gaskets of the filter, not those of a cover or plug in front of it. */
  readonly seals: readonly Seal[]
  /** The work at an oil change. `not stated`: a strainer is cleaned, a filter renewed. */
  readonly change: 'every change' | 'clean every change' | 'not stated'
  /** Where it is. */
  readonly place: PlaceOnMachine
}

/** How a filter is held: by its own thread, or by a plug or cover in front of it. */
export type FilterHold =
  /** By its own thread. `turns` are counted from the contact of its ring. */
  | {
      readonly kind: 'screwed'
      /** The designation as printed: `M20x1.5`; absent: not stated. */
      readonly thread?: string
      /** The drive of the filter. */
      readonly drive: DriveOnPart
      /** The tightening of the filter: `0.75 turns`. */
      readonly tightening: Tightening
    }
  /** By a plug or cover: remove that to take out the filter. */
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
