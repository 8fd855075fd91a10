import type { JsonPointer, Reason } from '../base/index.js'
import type { Action, Cover, FillMethod, Filter, Id, Level } from '../spec/index.js'
import type { PartName } from './names.js'

/** A step of a visit, with pointers to its figures, settings, oils and waits. */
export interface PlannedStep {
  readonly id: Id
  readonly do: Action
  /** The condition of the step: certain machines, or a low level; absent: always. */
  readonly onlyIf?: Reason
  readonly part?: PartName
  /** The way to secure the item; for a step that clears away, the items to release. */
  readonly how?: string
  /** The shield that covers the parts of a leak check. */
  readonly shield?: string
  /** The jacking point of a step that raises the machine; absent: not stated. */
  readonly jack?: string
  /** Pointers into this plan's `figures`, by the names of the procedure step. */
  readonly figures: Readonly<Record<string, JsonPointer>>
  /** Pointer into this plan's `tightenings`, for a step that tightens. */
  readonly tightening?: JsonPointer
  /** Pointer into this plan's `waits`. */
  readonly wait?: JsonPointer
  /** Pointer into this plan's `oil`. */
  readonly oil?: JsonPointer
  /** For a step that pours, checks the level or tops up. */
  readonly level?: PlannedLevel
  /** Whether the step loosens a plug before draining, and the next step turns it back in. */
  readonly beforeDraining?: true
  /** For a step on a cover. */
  readonly cover?: PlannedCover
  /** For a gearcase with grease; absent: oil. */
  readonly fluid?: 'grease'
  /** For a part that is loosened or tightened without a tool. */
  readonly drive?: 'hand' | 'clip'
  /** For a step on a filter or its seal. */
  readonly filter?: PlannedFilterHold
  /** Cautions to read before this step. */
  readonly cautions: readonly Reason[]
  readonly minutes: number
  readonly note?: string
}

/** The method of the level check; its figures are those of the step. */
export interface PlannedLevel {
  readonly method: FillMethod['kind']
  /** The way to read a dipstick. */
  readonly reading?: 'screwed in' | 'resting'
  readonly attitude: Level['attitude']
  readonly engine: Level['engine']
  /** Whether the oil was poured during this visit. */
  readonly afterFilling: boolean
}

/** The way to fit a filter. */
export interface PlannedFilterHold {
  readonly kind: Filter['kind']
  /** Whether the filter itself is screwed on. */
  readonly screwed: boolean
  /** Whether a new filter is fitted; if not, the old one is cleaned. */
  readonly renewed: boolean
}

export interface PlannedCover extends Pick<Cover, 'position' | 'carriesBearings'> {
  /** Absent: not stated. */
  readonly bolts?: number
  readonly pattern: Cover['bolts']['pattern']
}
