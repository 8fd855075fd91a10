import type { PrintedBand, Unit } from '../quantity/index.js'

/** `^[a-z][a-z0-9-]{0,63}$` */
export type Id = string

/** The source of a leaf. */
export interface SourceRef {
  /** Id in the sheet's `sources`. */
  readonly ref: Id
  /** The page as printed: `60`, `4-12`. */
  readonly page?: string
  /** `read`: read on that page; `second hand`: from a secondary source; `doubtful`: hard to read or contradicted. */
  readonly confidence: 'read' | 'second hand' | 'doubtful'
}

/** The manual gives no figure. No general table ever fills this gap. */
export interface NotStated {
  readonly kind: 'not stated'
  /** The page that shows that there is no figure. */
  readonly source?: SourceRef
}

/** The same value as printed in another unit. */
export type PrintedValue<U extends Unit = Unit> = PrintedBand<U>

/** A value from the manual: its first printed figure, with the others in `printed`. */
export type StatedValue<U extends Unit = Unit> = PrintedValue<U> & {
  /** The same value in the other units that the manual prints, in the order of the page. */
  readonly printed?: readonly PrintedValue<U>[]
  /** The source of the value. */
  readonly source?: SourceRef
}

/** A value of the manual: a figure, a figure with its tolerance, limits, or not stated. */
export type SpecValue<U extends Unit = Unit> = StatedValue<U> | NotStated
