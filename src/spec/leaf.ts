import type { DateText, PeriodText } from '../calendar/index.js'
import type {
  DistanceUnit,
  Figure,
  PrintedBand,
  PrintedQuantity,
  TemperatureUnit,
  TorqueUnit,
  Unit,
  VolumeUnit,
} from '../quantity/index.js'

export type { DateText }

/** `^[a-z][a-z0-9-]{0,63}$` */
export type Id = string

/** The first keys of every document. */
export interface DocumentHead<Kind extends string> {
  readonly kind: Kind
  readonly version: '1.0'
  readonly id: Id
  /** A note for readers of the file, such as that its data are invented. */
  readonly header?: string
}

/** The source of a leaf. */
export interface SourceRef {
  /** Id in the sheet's `sources`. */
  readonly ref: Id
  readonly page?: string
  /** `read`: read on that page; `second hand`: from a secondary source; `doubtful`: hard to read or contradicted. */
  readonly confidence: 'read' | 'second hand' | 'doubtful'
}

/** The manual gives no figure. No general table ever fills this gap. */
export interface NotStated {
  readonly kind: 'not stated'
  readonly source?: SourceRef
}

/** The same value, as the manual also prints it in another unit. */
export type PrintedValue<U extends Unit = Unit> = PrintedBand<U>

/** A value that the manual states: its first printed figure, then the others in `printed`. */
export type StatedValue<U extends Unit = Unit> = PrintedValue<U> & {
  readonly printed?: readonly PrintedValue<U>[]
  readonly source?: SourceRef
}

export type SpecValue<U extends Unit = Unit> = StatedValue<U> | NotStated

export type ThreadCondition =
  | 'dry'
  | 'oiled'
  | 'sealant'
  | 'anti-seize'
  | 'threadlocker'
  | 'as supplied'
  | 'not stated'

export interface TorqueTightening {
  readonly kind: 'torque'
  readonly torque: StatedValue<TorqueUnit>
  /** Torques to reach first, in order. */
  readonly stages?: readonly StatedValue<TorqueUnit>[]
  readonly thenAngle?: StatedValue<'deg'>
  readonly threadCondition: ThreadCondition
  readonly source?: SourceRef
}

/** Taper threads: turns past finger tight. */
export interface TurnsTightening {
  readonly kind: 'turns'
  readonly min: Figure
  readonly max?: Figure
  readonly maxTorque?: StatedValue<TorqueUnit>
  readonly threadCondition: ThreadCondition
  readonly source?: SourceRef
}

export interface TighteningNotStated {
  readonly kind: 'not stated'
  readonly threadCondition: ThreadCondition
  readonly source?: SourceRef
}

export type Tightening = TorqueTightening | TurnsTightening | TighteningNotStated

export type ReplaceWhen = 'every opening' | 'on condition' | 'not stated'

interface SealPart {
  readonly replace: ReplaceWhen
  readonly partNumber?: string
  readonly source?: SourceRef
}

export interface CrushWasher extends SealPart {
  readonly kind: 'crush washer'
  /** `captive`: held on the plug, in the undercut behind its thread. */
  readonly form: 'flat' | 'folded' | 'captive' | 'not stated'
  readonly material: 'copper' | 'aluminium' | 'soft steel' | 'fibre' | 'not stated'
  readonly size?: {
    readonly inside: Figure
    readonly outside: Figure
    readonly thickness: Figure
    readonly unit: 'mm' | 'in'
  }
}

export interface BondedSeal extends SealPart {
  readonly kind: 'bonded seal'
  /** `profile ring`: all rubber, in the undercut behind the plug's thread. Default: a washer with a rubber lip. */
  readonly form?: 'profile ring'
  readonly material: Elastomer
  readonly size?: {
    readonly inside: Figure
    readonly outside: Figure
    readonly thickness: Figure
    readonly unit: 'mm' | 'in'
  }
}

export type Elastomer =
  | 'NBR'
  | 'HNBR'
  | 'FKM'
  | 'ACM'
  | 'EPDM'
  | 'VMQ'
  | 'FVMQ'
  | 'AU'
  | 'CR'
  | 'FFKM'
  | 'not stated'

export interface ORing extends SealPart {
  readonly kind: 'o-ring'
  readonly material: Elastomer
  /** An AS568 dash number such as `-214`, or a JIS B 2401 number such as `P22` or `G45`. */
  readonly designation?: string
  readonly size?: { readonly inside: Figure; readonly section: Figure; readonly unit: 'mm' | 'in' }
}

export interface ThreadSealant extends SealPart {
  readonly kind: 'thread sealant'
  readonly product: string
}

export interface CutGasket extends SealPart {
  readonly kind: 'gasket'
  readonly material: string
}

export interface LiquidGasket extends SealPart {
  readonly kind: 'liquid gasket'
  readonly product: string
  readonly bead: SpecValue<'mm'>
  /** Time from closing the cover until oil may touch the joint. */
  readonly cureBeforeOil: SpecValue<'h' | 'min'>
}

export interface NoSeal {
  readonly kind: 'none'
  readonly source?: SourceRef
}

export type Seal =
  | CrushWasher
  | BondedSeal
  | ORing
  | ThreadSealant
  | CutGasket
  | LiquidGasket
  | NoSeal
  | NotStated

export type LimitedSlip = 'required' | 'not permitted' | 'either' | 'not stated'

export interface OilAdditive {
  readonly name: string
  readonly volume: SpecValue<VolumeUnit>
  readonly includedInRefill: boolean
  /** Which of the two goes in first; absent: the manual does not say. */
  readonly order?: 'additive first' | 'oil first' | 'not stated'
}

interface OilChoiceBase {
  /** Ambient temperatures for which the manual permits this oil. */
  readonly ambient?: StatedValue<TemperatureUnit>
  readonly limitedSlip: LimitedSlip
  readonly additive?: OilAdditive
}

export interface GradeOil extends OilChoiceBase {
  readonly kind: 'grade'
  /** As printed: `80W-90`, `75W-140`, `90`, `10W-30`, `VG 220`. */
  readonly grade: string
  readonly system: 'SAE J306' | 'SAE J300' | 'ISO VG'
  /** Edition of the system, if the manual names one: `2019`. */
  readonly edition?: string
  /** Service category such as `GL-4`, `GL-5`; absent: the manual names none. */
  readonly category?: string
}

/** A fluid that the manual requires by name; it is never matched by viscosity. */
export interface MakerFluid extends OilChoiceBase {
  readonly kind: 'maker fluid'
  readonly name: string
}

export type OilChoice = GradeOil | MakerFluid

export interface OilsStated {
  readonly kind: 'oils'
  readonly choices: readonly OilChoice[]
  readonly source?: SourceRef
}

/** The oils that the manual permits, as one list. */
export type Oils = OilsStated | NotStated

export interface IntervalDistance extends PrintedQuantity<DistanceUnit> {
  /** The other round number that the manual prints, as in `5000 km (3000 mi)`; the shorter distance decides. */
  readonly printed?: readonly PrintedQuantity<DistanceUnit>[]
}

/** At least one of hours, distance and period; the one that is reached first decides. */
export interface IntervalStated {
  readonly kind: 'interval'
  readonly hours?: Figure
  readonly distance?: IntervalDistance
  readonly period?: PeriodText
  readonly source?: SourceRef
}

export type Interval = IntervalStated | NotStated

/** The position of a part on the machine, in the manual's words. */
export interface PlaceStated {
  readonly kind: 'place'
  readonly text: string
  readonly source?: SourceRef
}

export type PlaceOnMachine = PlaceStated | NotStated

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
export type DriveKind = (typeof DRIVE_KINDS)[number]

/**
 * What turns a plug or bolt. `size` is a designation, matched exactly: `10 mm`, `3/8 in`, `T40`, `PH2`, `JIS 2`. A `clip` or
 * push rivet is pushed in and needs no torque.
 */
export interface Drive {
  readonly kind: DriveKind
  readonly size?: string
  readonly source?: SourceRef
}

export type DriveOnPart = Drive | NotStated

/** The kinds of leaves. An override replaces a whole leaf. */
export interface Leaves {
  readonly value: SpecValue
  readonly tightening: Tightening
  readonly oils: Oils
  readonly seal: Seal
  readonly interval: Interval
  readonly place: PlaceOnMachine
  readonly drive: DriveOnPart
}
export type LeafKind = keyof Leaves
export type Leaf = Leaves[LeafKind]

/** A condition for machines. Every given part must be met; if a fact is unknown, the answer is `cannot tell`. */
export interface Condition {
  readonly variants?: readonly Id[]
  readonly modelYears?: { readonly from?: number; readonly to?: number }
  /** Prefix plus a fixed-width number: `{ prefix: 'KA', from: '004512' }`. */
  readonly serials?: { readonly prefix?: string; readonly from?: string; readonly to?: string }
  readonly market?: readonly string[]
}

/** The known facts of one machine. */
export interface Identity {
  readonly variant?: Id
  readonly modelYear?: number
  readonly serial?: string
  readonly market?: string
}
