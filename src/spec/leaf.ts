import type { DateText, PeriodText } from '../calendar/index.js'
import type {
  DistanceUnit,
  Figure,
  LengthUnit,
  PrintedQuantity,
  TemperatureUnit,
  TorqueUnit,
  VolumeUnit,
} from '../quantity/index.js'
import type { Seal } from './seal.js'
import type { Id, NotStated, SourceRef, SpecValue, StatedValue } from './specValue.js'

export type { DateText }

/** The first keys of every document. */
export interface DocumentHead<Kind extends string> {
  /** Where an editor finds the JSON Schema: `./node_modules/drivetrain-service/schemas/v1/spec-sheet.json`. */
  readonly $schema?: string
  readonly kind: Kind
  /** The version of the format: `1.0`. */
  readonly version: '1.0'
  /** The id of the document, used by other documents to refer to it: `hallbrekka-tind-4`. */
  readonly id: Id
  /** A note for readers of the file: `Invented demo data.` */
  readonly header?: string
}

/** The state of the thread that a torque is for. */
export type ThreadCondition =
  | 'dry'
  | 'oiled'
  | 'sealant'
  | 'anti-seize'
  | 'threadlocker'
  | 'as supplied'
  | 'not stated'

/** Tightening to a torque, in stages or with an angle at the end if the manual says so. */
export interface TorqueTightening {
  readonly kind: 'torque'
  /** The final torque: `30 N·m`. */
  readonly torque: StatedValue<TorqueUnit>
  /** Torques of the earlier stages, in order. */
  readonly stages?: readonly StatedValue<TorqueUnit>[]
  /** The further angle after the torque, in degrees: `90 deg`. */
  readonly thenAngle?: StatedValue<'deg'>
  /** The state of the thread that the torque is for. A dry torque is too much for an oiled thread. */
  readonly threadCondition: ThreadCondition
  /** The source of the torque or angle. */
  readonly source?: SourceRef
}

/** Tightening of a taper thread by turns past finger tight. */
export interface TurnsTightening {
  readonly kind: 'turns'
  /** The minimum number of turns past finger tight, as text: `1`. */
  readonly min: Figure
  /** The maximum number of turns past finger tight: `1.5`. Absent: exactly `min`. */
  readonly max?: Figure
  /** The torque that must not be exceeded while turning: `40 N·m`. */
  readonly maxTorque?: StatedValue<TorqueUnit>
  /** The state of the thread, such as `sealant`. */
  readonly threadCondition: ThreadCondition
  /** The source of the torque or angle. */
  readonly source?: SourceRef
}

/** The manual gives no tightening. */
export interface TighteningNotStated {
  readonly kind: 'not stated'
  /** The state of the thread, if the manual states it. */
  readonly threadCondition: ThreadCondition
  /** The page that shows that there is no figure. */
  readonly source?: SourceRef
}

/** The tightening of a part: a torque, turns past finger tight, or not stated. */
export type Tightening = TorqueTightening | TurnsTightening | TighteningNotStated

/** Whether the oil must have, or must not have, an additive for limited-slip differentials. */
export type LimitedSlip = 'required' | 'not permitted' | 'either' | 'not stated'

/** An additive for the oil. */
export interface OilAdditive {
  /** The name of the additive: `friction modifier`. */
  readonly name: string
  /** The volume for one change: `100 mL`. */
  readonly volume: SpecValue<VolumeUnit>
  /** True if the refill quantity already includes it. */
  readonly includedInRefill: boolean
  /** Whether the oil or the additive goes in first. Absent if the manual does not say. */
  readonly order?: 'additive first' | 'oil first' | 'not stated'
}

interface OilChoiceBase {
  /** Ambient temperatures for which the manual permits this oil. */
  readonly ambient?: StatedValue<TemperatureUnit>
  /** Whether an additive for limited-slip differentials is required. */
  readonly limitedSlip: LimitedSlip
  /** The additive for the oil. */
  readonly additive?: OilAdditive
}

/** An oil by grade and category, of any make. */
export interface GradeOil extends OilChoiceBase {
  readonly kind: 'grade'
  /** As printed: `80W-90`, `75W-140`, `90`, `10W-30`, `VG 220`. */
  readonly grade: string
  /** The system of the grade, as the manual states it. */
  readonly system: 'SAE J306' | 'SAE J300' | 'ISO VG'
  /** Edition of the system, if the manual names one: `2019`. */
  readonly edition?: string
  /** Service category such as `GL-4`, `GL-5`; absent if the manual names none. */
  readonly category?: string
}

/** A fluid that the manual requires by name; it is never matched by viscosity. */
export interface MakerFluid extends OilChoiceBase {
  readonly kind: 'maker fluid'
  /** The name of the fluid as printed. */
  readonly name: string
}

/** One oil that the manual permits: by grade, or a fluid of the maker. */
export type OilChoice = GradeOil | MakerFluid

/** The oils that the manual permits, each at its own temperatures. */
export interface OilsStated {
  readonly kind: 'oils'
  /** The permitted oils, the preferred one first. */
  readonly choices: readonly OilChoice[]
  /** The source of the list of oils. */
  readonly source?: SourceRef
}

/** The oils that the manual permits, as one list. */
export type Oils = OilsStated | NotStated

/** A distance of an interval as printed. */
export interface IntervalDistance extends PrintedQuantity<DistanceUnit> {
  /** The other round number that the manual prints, as in `5000 km (3000 mi)`; the shorter distance decides. */
  readonly printed?: readonly PrintedQuantity<DistanceUnit>[]
}

/** At least one of hours, distance and period. The first limit reached decides. */
export interface IntervalStated {
  readonly kind: 'interval'
  /** Hours of the hour meter, as text: `200`. */
  readonly hours?: Figure
  /** Distance driven: `2000 km`. */
  readonly distance?: IntervalDistance
  /** Calendar time as an ISO 8601 duration of years, months, weeks and days: `P1Y`, `P6M`. */
  readonly period?: PeriodText
  /** The source of the interval. */
  readonly source?: SourceRef
}

/** An interval of hours, distance and period, or not stated. The first limit reached decides. */
export type Interval = IntervalStated | NotStated

/** The position of a part on the machine, in the manual's words. */
export interface PlaceStated {
  readonly kind: 'place'
  /** The place in the words of the manual: `left side of the housing, upper`. */
  readonly text: string
  /** The source of the position. */
  readonly source?: SourceRef
}

/** Where a part is on the machine, or not stated. */
export type PlaceOnMachine = PlaceStated | NotStated

/** The faces of a gearcase; left and right are those of the driver. */
export const CASE_FACES = ['left', 'right', 'front', 'rear', 'top', 'bottom'] as const
export type CaseFace = (typeof CASE_FACES)[number]
export const ACROSS_FACE = ['left', 'right', 'front', 'rear', 'middle'] as const
export const FACE_HEIGHTS = ['low', 'high', 'middle'] as const

/** The position of a part on its gearcase, for drawings. Directions are those of the machine, seen from the driver's seat. */
export interface CasePosition {
  readonly kind: 'position'
  /** The face of the gearcase: `bottom`. */
  readonly face: CaseFace
  /** To which side of the face; the left and right faces have `front` and `rear` instead of `left` and `right`: `left`. */
  readonly across?: (typeof ACROSS_FACE)[number]
  /** The height on an upright face: `low`. */
  readonly height?: (typeof FACE_HEIGHTS)[number]
  /** The distance from the middle to the side of `across`, as printed: `60 mm`. */
  readonly offset?: StatedValue<LengthUnit>
  /** The source of the position. */
  readonly source?: SourceRef
}

/** The position of a part on its gearcase, or not stated. */
export type PositionOnCase = CasePosition | NotStated

export const DRIVE_KINDS = [
  'external hex',
  'internal hex',
  'internal square',
  'external square',
  'six-lobe',
  'slot',
  'cross recess',
  'clip',
  'hand',
] as const
/** The shape of the head of a plug or bolt. */
export type DriveKind = (typeof DRIVE_KINDS)[number]

/**
 * The drive of a plug or bolt. `size` is a designation that must match exactly: `10 mm`, `3/8 in`, `T40`,
 * `PH2`, `JIS 2`. A `clip` or push rivet is pushed in and needs no torque.
 */
export interface Drive {
  /** The shape of the head: `internal hex`. */
  readonly kind: DriveKind
  /** The size as a designation: `10 mm`, `3/8 in`, `T40`, `PH2`. */
  readonly size?: string
  /** The source. */
  readonly source?: SourceRef
}

/** The drive of a plug or bolt, or not stated. */
export type DriveOnPart = Drive | NotStated

/** The kinds of leaves. An override replaces a whole leaf. */
export interface Leaves {
  readonly value: SpecValue
  readonly tightening: Tightening
  readonly oils: Oils
  readonly seal: Seal
  readonly interval: Interval
  readonly place: PlaceOnMachine
  readonly position: PositionOnCase
  readonly drive: DriveOnPart
}
export type LeafKind = keyof Leaves
export type Leaf = Leaves[LeafKind]

/**
 * A condition for machines. Every stated part must be met. If a fact is unknown, the answer is `cannot tell`.
 */
export interface Condition {
  /** Ids of the variants that meet the condition. */
  readonly variants?: readonly Id[]
  /** A range of model years, both ends included. One end may be absent. */
  readonly modelYears?: {
    /** The first model year: `2019`. */
    readonly from?: number
    /** The last model year: `2021`. */
    readonly to?: number
  }
  /** Prefix plus a fixed-width number: `{ prefix: 'KA', from: '004512' }`. */
  readonly serials?: {
    /** The letters before the number: `KA`. */
    readonly prefix?: string
    /** The first number, with its leading zeros: `004512`. */
    readonly from?: string
    /** The last number, with its leading zeros: `004999`. */
    readonly to?: string
  }
  /** Markets as on the plate or in the manual: `NO`. */
  readonly market?: readonly string[]
}

/** The known facts of one machine. */
export interface Identity {
  /** The id of the variant in the sheet: `with-loader`. */
  readonly variant?: Id
  /** The model year: `2021`. */
  readonly modelYear?: number
  /** The serial number as on the plate: `KA004512`. */
  readonly serial?: string
  /** The market that the machine was made for: `NO`. */
  readonly market?: string
}
