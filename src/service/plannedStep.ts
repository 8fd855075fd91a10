import type { JsonPointer, Reason } from '../base/index.js'
import type { Action, Cover, FillMethod, Filter, Id, Level } from '../spec/index.js'
import type { PartName } from './names.js'

/** One step of a visit, joined to the figures, settings, oils and waits that it shows. */
export interface PlannedStep {
  readonly id: Id
  readonly do: Action
  /** Only on these machines, where it is unknown whether this is one, or only if the level is low; absent: always. */
  readonly onlyIf?: Reason
  readonly part?: PartName
  /** How the item is secured, for a step of the sheet's list; for one that clears away, the items to release. */
  readonly how?: string
  /** A shield that is back in front of what a leak check looks at. */
  readonly shield?: string
  /** Where the jack goes, for a step that raises; absent: not stated. */
  readonly jack?: string
  /** Pointers into this plan's `figures`, by the step's own names. */
  readonly figures: Readonly<Record<string, JsonPointer>>
  /** Pointer into this plan's `tightenings`, for a step that tightens. */
  readonly tightening?: JsonPointer
  /** Pointer into this plan's `waits`. */
  readonly wait?: JsonPointer
  /** Pointer into this plan's `oil`. */
  readonly oil?: JsonPointer
  /** For a step that pours, checks the level or tops up. */
  readonly level?: PlannedLevel
  /** A fill plug that is loosened first and turned back in: if it stays tight, nothing is drained. */
  readonly beforeDraining?: true
  /** For a step on a cover: how it comes off and is tightened. */
  readonly cover?: PlannedCover
  /** Set where the gearcase takes grease, which is pressed in; absent: oil. */
  readonly fluid?: 'grease'
  /** What closes the part of a step that tightens, where no tool does. */
  readonly drive?: 'hand' | 'clip'
  /** For a step on a filter or a seal of one. */
  readonly filter?: PlannedFilterHold
  /** Cautions to read before this step. */
  readonly cautions: readonly Reason[]
  readonly minutes: number
  readonly note?: string
}

/** How the fill is judged; the figures of a level are the step's own. */
export interface PlannedLevel {
  readonly method: FillMethod['kind']
  /** How a dipstick is read. */
  readonly reading?: 'screwed in' | 'resting'
  readonly attitude: Level['attitude']
  readonly engine: Level['engine']
  /** Oil was poured at this visit: what is too much is the technician's own. */
  readonly afterFilling: boolean
}

/** How a filter goes on; one that is not renewed is cleaned. */
export interface PlannedFilterHold {
  readonly kind: Filter['kind']
  readonly screwed: boolean
  readonly renewed: boolean
}

export interface PlannedCover extends Pick<Cover, 'position' | 'carriesBearings'> {
  /** Absent: not stated. */
  readonly bolts?: number
  readonly pattern: Cover['bolts']['pattern']
}
