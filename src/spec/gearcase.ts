import type { LengthUnit, TemperatureUnit, VolumeUnit } from '../quantity/index.js'
import type { Filter } from './filter.js'
import type { Condition, DriveOnPart, Oils, PlaceOnMachine, PositionOnCase, Tightening } from './leaf.js'
import type { Seal } from './seal.js'
import type { Id, NotStated, SpecValue } from './specValue.js'

/** The function of a gearcase. */
export type GearcaseType =
  | 'differential'
  | 'final drive'
  | 'transfer case'
  | 'hub reduction'
  | 'bevel box'
  | 'gearbox'

/** One gearcase: its oil, openings, covers and filters, and how to reach them. */
export interface Gearcase {
  /** The name in plain words: `front differential`. */
  readonly name: string
  /** The function of the gearcase. */
  readonly type: GearcaseType
  /** The machines that have the gearcase. Absent: all. */
  readonly appliesTo?: Condition
  /** The instances, such as left and right, if the machine has several of this gearcase. */
  readonly instances?: Readonly<
    Record<
      Id,
      {
        /** The name in plain words: `left`. */
        readonly name: string
      }
    >
  >
  /** The id of the axle that it is on. */
  readonly axle?: Id
  /** Whether the work is done from the ground or with the machine on stands. */
  readonly access: Access
  /** The oil of the gearcase: its own, or that of another. */
  readonly oilSpace: OilSpace
  /** The plugs and holes, by id: `fill`, `drain`, `level`. */
  readonly openings: Readonly<Record<Id, Opening>>
  /** The covers, by id. */
  readonly covers?: Readonly<Record<Id, Cover>>
  /** The filters and strainers, by id. */
  readonly filters?: Readonly<Record<Id, Filter>>
  /** Ways to get the old oil out, the preferred one first. */
  readonly emptying: readonly Emptying[]
  /** The breather, which must be clear. */
  readonly breather?: {
    /** Where it is. */
    readonly place: PlaceOnMachine
    /** Its position on the gearcase, for drawings: `top face, right`. */
    readonly position?: PositionOnCase
  }
  /** Shields to remove first. Omit a shield that stays on because its holes give access to the plugs. */
  readonly shields?: readonly Id[]
  /** Oil temperature for draining, if the manual gives one. */
  readonly drainTemperature?: SpecValue<TemperatureUnit>
  /** Oil temperature in continuous work, if the manual gives one; rubber seals must withstand it. */
  readonly workingTemperature?: SpecValue<TemperatureUnit>
  /** Whether bronze or brass parts run in this oil, if the manual says so. */
  readonly yellowMetal?: 'yes' | 'no' | 'not stated'
}

/** Access for the work. */
export type Access =
  | { readonly kind: 'from the ground' }
  | {
      readonly kind: 'raised'
      /** Ids of the supports on which the machine is raised. */
      readonly supports: readonly Id[]
    }
  | NotStated

/** A gearcase's own oil. */
export interface OwnOilSpace {
  readonly kind: 'own'
  /** The oils that the manual permits. */
  readonly oils: Oils
  /** The quantity of oil, and the check of its level. */
  readonly fill: Fill
  /** Gearcases into which oil can slowly pass; the level settles after a run. */
  readonly passageTo?: readonly Id[]
}

/** Oil shared with the gearcase named in `with`. That gearcase's service, drain and oil apply to both. */
export interface SharedOilSpace {
  readonly kind: 'shared'
  /** The id of the gearcase that owns the oil. */
  readonly with: Id
  /** The share of the oil in this gearcase: `1.5 L`. */
  readonly portion?: SpecValue<VolumeUnit>
}

/** The oil of a gearcase: its own, or that of another gearcase. */
export type OilSpace = OwnOilSpace | SharedOilSpace

/** The quantity of oil, and the check of its level. */
export interface Fill {
  /** The oil for a change after draining: `450 mL`. */
  readonly drainAndRefill: SpecValue<VolumeUnit>
  /** The oil for a gearcase that is empty and dry: `500 mL`. */
  readonly dryFill?: SpecValue<VolumeUnit>
  /** Whether quantities are for one instance or for all, if the gearcase has instances. */
  readonly per?: 'instance' | 'all instances'
  /** The check of the refill. */
  readonly method: FillMethod
  /** The state of the machine and the oil for reading the level. */
  readonly level?: Level
}

/** The check of the refill: by quantity, level hole, dipstick or sight glass, or not stated. */
export type FillMethod =
  | {
      readonly kind: 'by quantity'
      /** The id of the opening for this method. */
      readonly opening: Id
    }
  | {
      readonly kind: 'to level hole'
      readonly opening: Id
      /** How far below the lower edge of the hole the oil may be: `5 mm`. */
      readonly below?: SpecValue<LengthUnit>
    }
  | {
      readonly kind: 'dipstick'
      readonly opening: Id
      /** Whether the dipstick is screwed in or rests on its thread when it is read. */
      readonly reading: 'screwed in' | 'resting'
    }
  | { readonly kind: 'sight glass'; readonly opening: Id }
  | NotStated

/** The state of the machine and the oil for reading the level. */
export interface Level {
  /** The position of the machine. */
  readonly attitude: 'level on its wheels' | 'level on stands' | 'not stated'
  /** The temperature of the oil: `40 °C`. */
  readonly temperature?: SpecValue<TemperatureUnit>
  /** The wait after the engine stops: `10 min`. */
  readonly minutesAfterStop?: SpecValue<'min'>
  /** Whether the engine is stopped or runs. */
  readonly engine: 'stopped' | 'running' | 'not stated'
  /** True if the level falls as the oil spreads. Check it again after a short run. */
  readonly recheckAfterRun: boolean
}

/** One way to get the old oil out: a drain plug, a cover, or suction. */
export type Emptying =
  | {
      readonly kind: 'drain plug'
      /** The id of the opening. */
      readonly opening: Id
      /** Ids of other drains to open with it: `rear-drain`. */
      readonly also?: readonly Id[]
    }
  | {
      readonly kind: 'cover'
      /** The id of the cover to remove. */
      readonly cover: Id
    }
  | { readonly kind: 'suction'; readonly opening: Id }

/** The purpose of an opening. */
export type OpeningRole = 'fill' | 'drain' | 'level'
/** The position of the wheel mark for an opening that turns with the hub. */
export const WHEEL_MARKS = ['mark down', 'mark level', 'mark up'] as const
export type WheelMark = (typeof WHEEL_MARKS)[number]

/** One use of an opening. */
export interface OpeningUse {
  /** The purpose of the opening. */
  readonly role: OpeningRole
  /** The position of the wheel mark for this use, if the opening turns with the hub. */
  readonly wheelMark?: WheelMark
}

/** A plug or hole in a gearcase. */
export interface Opening {
  /** The name in plain words: `drain plug`. */
  readonly name: string
  /** The machines that have the opening. Absent: all. */
  readonly appliesTo?: Condition
  /** The uses of the opening: fill, drain, level. */
  readonly uses: readonly OpeningUse[]
  /** Designation as printed: `M18x1.5`, `R 1/2`, `1/2-14 NPT`; absent: not stated. */
  readonly thread?: string
  /** The material around the thread. */
  readonly housing?: 'steel' | 'cast iron' | 'aluminium' | 'not stated'
  /** The drive of the plug: `internal hex 10 mm`. */
  readonly drive: DriveOnPart
  /** The tightening of the plug: `30 N·m, dry`. */
  readonly tightening: Tightening
  /** The seals of the plug; an empty list if it has none. */
  readonly seals: readonly Seal[]
  /** True if the plug has a magnet. */
  readonly magnet?: boolean
  /** Where the opening is. */
  readonly place: PlaceOnMachine
  /** Its position on the gearcase, for drawings: `left face, middle`. */
  readonly position?: PositionOnCase
}

/** A bolted cover with its seal. */
export interface Cover {
  /** The name in plain words: `rear cover`. */
  readonly name: string
  /** The machines that have the cover. Absent: all. */
  readonly appliesTo?: Condition
  /** The bolts: their number, tightening and order. */
  readonly bolts: FastenerSet & {
    /** The order of tightening. */
    readonly pattern: 'crosswise' | 'from the middle outwards' | 'in turn' | 'not stated'
  }
  /** The seal between cover and gearcase. */
  readonly seal: Seal
  /** True if the cover has a magnet. */
  readonly magnet?: boolean
  /** Where the cover is. */
  readonly place: PlaceOnMachine
  /**
   * `bottom`: the bottom pan of the gearcase. The position decides how to remove the cover without a gush of
   * oil.
   */
  readonly position?: 'upright' | 'bottom' | 'not stated'
  /** True if it carries bearings with shims and preload. Remove and fit it only according to the manual. */
  readonly carriesBearings?: boolean
}

/** Equal bolts or screws. */
export interface FastenerSet {
  /** The number of bolts: `10`. */
  readonly count: number | 'not stated'
  /** The designation as printed: `M8`; absent: not stated. */
  readonly thread?: string
  /** The strength as marked on the head: `8.8`. */
  readonly propertyClass?: string
  /** Their drive: `external hex 13 mm`. */
  readonly drive: DriveOnPart
  /** Their tightening: `25 N·m, dry`. */
  readonly tightening: Tightening
}

/** A guard or plate to remove first. */
export interface Shield {
  /** The name in plain words: `skid plate`. */
  readonly name: string
  /** The machines that have the shield. Absent: all. */
  readonly appliesTo?: Condition
  /** The fasteners of the shield. */
  readonly fasteners: FastenerSet
  /** Where it is. */
  readonly place: PlaceOnMachine
  /**
   * Refit a guard over moving parts before the machine runs, and a plate under the machine after the last
   * leak check.
   */
  readonly guards?: 'moving parts' | 'the underside' | 'not stated'
  /** True if it stays on because the plugs are reached through its holes. */
  readonly reachedThrough?: boolean
}
