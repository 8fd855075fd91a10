import type { Condition, DriveOnPart, Id, PlaceOnMachine, Seal, Tightening } from './leaf.js'

/** A filter or strainer in the oil of a gearcase. The oil that stays in it is not judged: the manual's refill includes it. */
export interface Filter {
  readonly name: string
  readonly appliesTo?: Condition
  readonly kind: 'spin-on filter' | 'cartridge filter' | 'strainer'
  readonly held: FilterHold
  /** Rings and gaskets of the filter, not those of a cover or plug in front of it. */
  readonly seals: readonly Seal[]
  /** Of a new one. */
  readonly partNumber?: string
  /** What the manual does at an oil change; `not stated`: a strainer is cleaned, a filter renewed. */
  readonly change: 'every change' | 'clean every change' | 'not stated'
  readonly place: PlaceOnMachine
}

export type FilterHold =
  /** By its own thread; `turns` count from the contact of its ring. */
  | {
      readonly kind: 'screwed'
      readonly thread?: string
      readonly drive: DriveOnPart
      readonly tightening: Tightening
    }
  /** A plug or cover holds it; it comes out when that is off. */
  | { readonly kind: 'behind opening'; readonly opening: Id }
  | { readonly kind: 'behind cover'; readonly cover: Id }
