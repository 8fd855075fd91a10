import type { JsonPointer } from '../../base/index.js'
import type { Quantity, TorqueUnit, VolumeUnit } from '../../quantity/index.js'
import type {
  Condition,
  Drive,
  FillMethod,
  Id,
  IntervalStated,
  Level,
  OpeningUse,
  Source,
  TorqueWrench,
  WrenchScale,
} from '../../spec/index.js'
import type { PartName } from '../names.js'
import type {
  PlannedFigure,
  PlannedMachine,
  PlannedMissing,
  PlannedOil,
  PlannedTightening,
  VisitPlan,
} from '../visitPlan.js'

/**
 * The facts of a wall card, as plain JSON: what the manual states for one machine or variant, the wrench
 * settings, pouring times and true sizes. They have no date, and depend on no log and no amounts in stock.
 */
export interface WallFacts {
  readonly kind: 'wall-facts'
  readonly version: '1.0'
  readonly machine: Omit<PlannedMachine, 'log' | 'name'> & {
    /** The condition for the variant, such as its serial numbers; absent: none, or the variant is not known. */
    readonly when?: Condition
  }
  /** Every leaf of the sheet that the card needs, with the intervals last. */
  readonly figures: readonly PlannedFigure[]
  readonly intervals: readonly WallInterval[]
  /** Facts that the manual does not state, or that depend on an unknown fact. */
  readonly missing: readonly PlannedMissing[]
  /** In the order of work. */
  readonly panels: readonly WallPanel[]
  readonly job: readonly WallJobLine[]
  /** In the order of use. */
  readonly tightenings: readonly PlannedTightening[]
  readonly wrenches: readonly WallWrench[]
  readonly oil: readonly Omit<PlannedOil, 'take' | 'buy' | 'reasons'>[]
  readonly pours: readonly WallPour[]
  readonly jugs: readonly WallJug[]
  readonly sizes: readonly WallSize[]
  readonly sources: Readonly<Record<Id, Source>>
  /** Hand tools and supplies of the job. */
  readonly handTools?: VisitPlan['handTools']
}

/** The intervals of one service. */
export interface WallInterval {
  readonly service: Id
  readonly serviceName: string
  readonly task: 'check' | 'change'
  readonly gearcases: readonly PartName[]
  /** Pointers into `figures`. */
  readonly repeat: JsonPointer
  readonly first?: JsonPointer
  readonly severe?: {
    readonly criteria: string
    /** Pointer into `figures`; absent: the repeat interval times `factor`. */
    readonly interval?: JsonPointer
    readonly factor?: string
    /** The repeat interval times `factor`; absent if the interval is not stated, or a period is not whole days. */
    readonly scaled?: IntervalStated
  }
  /** Whether the service is due before the next use after the machine was under water. */
  readonly afterSubmersion: boolean
}

/** One gearcase. */
export interface WallPanel {
  readonly part: PartName
  /** Absent: the machine has one. */
  readonly instances?: readonly string[]
  /** The gearcase that owns the oil; absent: its own. */
  readonly oilOf?: PartName
  readonly access: 'from the ground' | 'raised' | 'not stated'
  /** The places of the stands; empty on the ground. */
  readonly supports: readonly string[]
  /** Pointers into `figures` and `oil`. */
  readonly refill?: JsonPointer
  readonly oils?: JsonPointer
  readonly oil?: JsonPointer
  readonly fill?: {
    readonly method: FillMethod['kind']
    /** Place in `parts` of the opening at which the level is read or the oil goes in. */
    readonly at?: number
    readonly reading?: 'screwed in' | 'resting'
    readonly attitude: Level['attitude']
    readonly engine: Level['engine']
    readonly recheckAfterRun: boolean
    /** Pointers into `figures`: the depth below the hole, the oil temperature, the wait after stopping. */
    readonly level: readonly JsonPointer[]
  }
  readonly drainTemperature?: JsonPointer
  readonly breather?: JsonPointer
  readonly breatherPosition?: JsonPointer
  /** Openings, covers, filters and shields, in the order in which they are loosened. */
  readonly parts: readonly WallPart[]
  /**
   * Paths of the parts of this gearcase and of those that share its oil, in the order in which they are first loosened
   * and first tightened; empty if the oil belongs to another gearcase.
   */
  readonly loosen: readonly JsonPointer[]
  readonly tighten: readonly JsonPointer[]
}

/** A plug, cover, filter or shield of a panel. */
export interface WallPart {
  readonly role: 'fill' | 'level' | 'drain' | 'plug' | 'cover' | 'filter' | 'shield'
  readonly part: PartName
  /** The use of an opening, with the position of the wheel mark. */
  readonly uses?: readonly OpeningUse[]
  /** The number of bolts or fasteners; absent for a plug, or not stated. */
  readonly count?: number
  /** The order of tightening of a cover, if it is stated. */
  readonly pattern?: 'crosswise' | 'from the middle outwards' | 'in turn'
  /** One drive, several if a fact is not known, none if it is not stated; absent: nothing turns the part. */
  readonly drives?: readonly Drive[]
  /** Pointers into `tightenings` and `figures`. */
  readonly tightening?: JsonPointer
  readonly seals: readonly JsonPointer[]
  readonly place?: JsonPointer
  readonly position?: JsonPointer
  readonly magnet?: true
}

/** Lines of the job, in order; each is left out if the procedure of the machine has none of its actions. */
export type WallJobName =
  | 'prepare'
  | 'raise'
  | 'open'
  | 'drain'
  | 'inspect'
  | 'close'
  | 'fill'
  | 'shut'
  | 'run'
  | 'finish'

/** A phrase of a line of the job; each phrase has its steps in the procedure. */
export type WallPhrase =
  | 'warm the oil'
  | 'park'
  | 'engine off'
  | 'chock'
  | 'secure'
  | 'finish first'
  | 'stands'
  | 'ramps'
  | 'shields off'
  | 'breather'
  | 'clean'
  | 'fill first'
  | 'crack loose'
  | 'pan'
  | 'drain'
  | 'vent'
  | 'cover off'
  | 'suck out'
  | 'let drain'
  | 'sample'
  | 'filter'
  | 'look at the oil'
  | 'look at the magnet'
  | 'clean the magnet'
  | 'old seals'
  | 'faces'
  | 'new seals'
  | 'inspect seals'
  | 'sealant'
  | 'drain tight'
  | 'cover tight'
  | 'cure'
  | 'mark down'
  | 'mark level'
  | 'mark up'
  | 'measure'
  | 'additive'
  | 'pour'
  | 'hose'
  | 'level'
  | 'no level'
  | 'fill tight'
  | 'tighten'
  | 'dry behind shield'
  | 'shields on'
  | 'lower'
  | 'all clear'
  | 'run'
  | 'settle'
  | 'recheck'
  | 'tight again'
  | 'leak check'
  | 'used oil'
  | 'record'

export interface WallJobLine {
  readonly line: WallJobName
  readonly phrases: readonly {
    readonly phrase: WallPhrase
    readonly steps: readonly Id[]
    /** The openings, covers or gearcases that the phrase is for; absent: all that have them. */
    readonly only?: readonly PartName[]
  }[]
}

/** A torque wrench of the toolbox that the job uses. */
export interface WallWrench {
  readonly id: Id
  readonly name: string
  readonly type: TorqueWrench['type']
  readonly drive: string
  /** The scales on which a setting is read. */
  readonly scales: readonly {
    readonly scale: WrenchScale
    /** Pointers into `tightenings`. */
    readonly settings: readonly { readonly tightening: JsonPointer; readonly setting: Quantity<TorqueUnit> }[]
  }[]
}

/** Pouring the oil of one gearcase (each instance) through the fastest funnel of the toolbox. */
export interface WallPour {
  readonly part: PartName
  readonly filler?: string
  readonly at: readonly {
    readonly celsius: number
    readonly oil?: string
    /**
     * Seconds from the start of the pour to the end of each part: the hose fills, the funnel empties, the hose
     * drips out. Absent: not known; wait until nothing drips.
     */
    readonly ends?: readonly [fills: number, empties: number, drips: number]
  }[]
}

/** A measuring vessel with the mark for each pour. */
export interface WallJug {
  readonly part: PartName
  readonly name: string
  readonly size: Quantity<VolumeUnit>
  /** In the unit of `size`, like the marks. */
  readonly graduation: Quantity<VolumeUnit>
  readonly marks: readonly Quantity<VolumeUnit>[]
}

/** A seal or hexagon to be drawn in true size, in millimetres. */
export type WallSize = {
  readonly parts: readonly PartName[]
  readonly count: number
} & (
  | {
      readonly kind: 'ring'
      /** Pointer into `figures`. */
      readonly seal: JsonPointer
      readonly inside: number
      readonly outside: number
      readonly thickness?: number
    }
  | { readonly kind: 'hexagon'; readonly drive: Drive; readonly acrossFlats: number }
)
