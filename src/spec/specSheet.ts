import type { JsonPointer } from '../base/index.js'
import type { Figure, LengthUnit, MassUnit, TemperatureUnit, VolumeUnit } from '../quantity/index.js'
import type { Filter } from './filter.js'
import type {
  Condition,
  DateText,
  DocumentHead,
  DriveOnPart,
  Id,
  Interval,
  LeafKind,
  Leaves,
  NotStated,
  Oils,
  PlaceOnMachine,
  Seal,
  SourceRef,
  SpecValue,
  Tightening,
} from './leaf.js'

/** The manual's figures for one machine model and its variants. */
export interface SpecSheet extends DocumentHead<'spec-sheet'> {
  /** The revision of the sheet; a log names the revision that it refers to. */
  readonly revision: string
  readonly machine: Machine
  readonly sources: Readonly<Record<Id, Source>>
  readonly gearcases: Readonly<Record<Id, Gearcase>>
  readonly shields?: Readonly<Record<Id, Shield>>
  readonly services: Readonly<Record<Id, Service>>
  readonly overrides?: readonly Override[]
  readonly waivers?: readonly Waiver[]
}

export interface Machine {
  readonly make: string
  readonly model: string
  /** The kind of machine, in plain words. */
  readonly type: string
  readonly mass?: SpecValue<MassUnit>
  readonly variants: Readonly<Record<Id, Variant>>
  readonly axles: Readonly<Record<Id, { readonly name: string; readonly wheels: number }>>
  readonly supports: Readonly<Record<Id, Support>>
  /** Items to secure, in this order: implement, loader, PTO, articulation lock, a brake to release. */
  readonly secure?: readonly SecuredItem[]
}

export interface SecuredItem {
  readonly item: string
  readonly how: string
  readonly when: 'before work' | 'before a run'
}

/** The place of the stands, the jacking point (absent: not stated), and the lifted axle. */
export interface Support {
  readonly at: string
  readonly jack?: string
  readonly axle?: Id
}

export interface Variant {
  readonly name: string
  /** Absent: only the log can select this variant. */
  readonly when?: Condition
}

export interface Source {
  readonly title: string
  readonly document:
    | 'owner manual'
    | 'workshop manual'
    | 'service bulletin'
    | 'parts list'
    | 'plate'
    | 'other'
  readonly edition?: string
  readonly date?: DateText
}

export type GearcaseType =
  | 'differential'
  | 'final drive'
  | 'transfer case'
  | 'hub reduction'
  | 'bevel box'
  | 'gearbox'

export interface Gearcase {
  readonly name: string
  readonly type: GearcaseType
  readonly appliesTo?: Condition
  /** Left, right and so on, if the machine has this gearcase several times. */
  readonly instances?: Readonly<Record<Id, { readonly name: string }>>
  readonly axle?: Id
  readonly access: Access
  readonly oilSpace: OilSpace
  readonly openings: Readonly<Record<Id, Opening>>
  readonly covers?: Readonly<Record<Id, Cover>>
  readonly filters?: Readonly<Record<Id, Filter>>
  /** Ways to get the old oil out, the preferred one first. */
  readonly emptying: readonly Emptying[]
  readonly breather?: { readonly place: PlaceOnMachine }
  /** Shields that come off first. */
  readonly shields?: readonly Id[]
  /** Oil temperature for draining, if the manual gives one. */
  readonly drainTemperature?: SpecValue<TemperatureUnit>
  /** Oil temperature in continuous work, if the manual gives one; rubber seals must bear it. */
  readonly workingTemperature?: SpecValue<TemperatureUnit>
  /** Whether bronze or brass parts run in this oil, if the manual says so. */
  readonly yellowMetal?: 'yes' | 'no' | 'not stated'
}

export type Access =
  | { readonly kind: 'from the ground' }
  | { readonly kind: 'raised'; readonly supports: readonly Id[] }
  | NotStated

export interface OwnOilSpace {
  readonly kind: 'own'
  readonly oils: Oils
  readonly fill: Fill
  /** Gearcases into which oil can slowly pass; the level settles after a run. */
  readonly passageTo?: readonly Id[]
}

/** The gearcase named in `with` owns the oil: its service, drain and oil count for both. */
export interface SharedOilSpace {
  readonly kind: 'shared'
  readonly with: Id
  readonly portion?: SpecValue<VolumeUnit>
}

export type OilSpace = OwnOilSpace | SharedOilSpace

export interface Fill {
  readonly drainAndRefill: SpecValue<VolumeUnit>
  readonly dryFill?: SpecValue<VolumeUnit>
  /** Whether quantities are for one instance or for all, if the gearcase has instances. */
  readonly per?: 'instance' | 'all instances'
  readonly method: FillMethod
  readonly level?: Level
}

export type FillMethod =
  | { readonly kind: 'by quantity'; readonly opening: Id }
  | { readonly kind: 'to level hole'; readonly opening: Id; readonly below?: SpecValue<LengthUnit> }
  | { readonly kind: 'dipstick'; readonly opening: Id; readonly reading: 'screwed in' | 'resting' }
  | { readonly kind: 'sight glass'; readonly opening: Id }
  | NotStated

export interface Level {
  readonly attitude: 'level on its wheels' | 'level on stands' | 'not stated'
  readonly temperature?: SpecValue<TemperatureUnit>
  readonly minutesAfterStop?: SpecValue<'min'>
  readonly engine: 'stopped' | 'running' | 'not stated'
  /** The level falls as the oil spreads: check it again after a short run. */
  readonly recheckAfterRun: boolean
}

export type Emptying =
  /** `also`: further drains that are opened with it. */
  | { readonly kind: 'drain plug'; readonly opening: Id; readonly also?: readonly Id[] }
  | { readonly kind: 'cover'; readonly cover: Id }
  | { readonly kind: 'suction'; readonly opening: Id }

export type OpeningRole = 'fill' | 'drain' | 'level'
/** The position of the wheel's mark for an opening that turns with the hub. */
export const WHEEL_MARKS = ['mark down', 'mark level', 'mark up'] as const
export type WheelMark = (typeof WHEEL_MARKS)[number]

export interface OpeningUse {
  readonly role: OpeningRole
  readonly wheelMark?: WheelMark
}

export interface Opening {
  readonly name: string
  readonly appliesTo?: Condition
  readonly uses: readonly OpeningUse[]
  /** Designation as printed: `M18x1.5`, `R 1/2`, `1/2-14 NPT`; absent: not stated. */
  readonly thread?: string
  /** The material around the thread. */
  readonly housing?: 'steel' | 'cast iron' | 'aluminium' | 'not stated'
  readonly drive: DriveOnPart
  readonly tightening: Tightening
  readonly seals: readonly Seal[]
  readonly magnet?: boolean
  readonly place: PlaceOnMachine
}

export interface Cover {
  readonly name: string
  readonly appliesTo?: Condition
  readonly bolts: FastenerSet & {
    readonly pattern: 'crosswise' | 'from the middle outwards' | 'in turn' | 'not stated'
  }
  readonly seal: Seal
  readonly magnet?: boolean
  readonly place: PlaceOnMachine
  /** `bottom`: the bottom pan of the gearcase. The position decides how the cover comes off without a gush of oil. */
  readonly position?: 'upright' | 'bottom' | 'not stated'
  /** It holds bearings with shims and preload: take it off and fit it only by the manual. */
  readonly carriesBearings?: boolean
}

export interface FastenerSet {
  readonly count: number | 'not stated'
  readonly thread?: string
  readonly propertyClass?: string
  readonly drive: DriveOnPart
  readonly tightening: Tightening
}

export interface Shield {
  readonly name: string
  readonly appliesTo?: Condition
  readonly fasteners: FastenerSet
  readonly place: PlaceOnMachine
  /** A guard over moving parts goes back before the machine runs, a plate under the machine after the last leak check. */
  readonly guards?: 'moving parts' | 'the underside' | 'not stated'
}

/** Events that make services due. */
export const MACHINE_EVENT_KINDS = [
  'submersion',
  'rebuild',
  'storage',
  'contamination',
  'seal failure',
  'oil loss',
] as const
export type MachineEventKind = (typeof MACHINE_EVENT_KINDS)[number]

export interface Service {
  readonly name: string
  readonly task: 'check' | 'change'
  readonly appliesTo?: Condition
  /** Services that count as done when this one is done. */
  readonly satisfies?: readonly Id[]
  readonly gearcases: readonly Id[]
  readonly intervals: Intervals
  /** Events that make this service due before next use. */
  readonly events?: readonly MachineEventKind[]
  /** Notes by action id. */
  readonly notes?: Readonly<Record<Id, string>>
}

export type CountFrom = 'completion' | 'schedule inside window' | 'schedule'

export interface Intervals {
  /** Counts from first use or from the rebuild. */
  readonly first?: Interval
  readonly repeat: Interval
  readonly severe?: SevereUse
  readonly countFrom: CountFrom
  /** How late a service may be before it is overdue, or how early without moving the schedule. */
  readonly window?: Interval
}

export type SevereUse =
  | { readonly kind: 'interval'; readonly interval: Interval; readonly criteria: string }
  | {
      readonly kind: 'factor'
      readonly factor: Figure
      readonly criteria: string
      readonly source?: SourceRef
    }

export interface Override {
  readonly when: Condition
  readonly set: readonly OverrideLeaf[]
  readonly source?: SourceRef
}

export type OverrideLeaf = {
  readonly [K in LeafKind]: { readonly kind: K; readonly path: JsonPointer; readonly to: Leaves[K] }
}[LeafKind]

/** A finding that the writer accepts; it is reported as waived. */
export interface Waiver {
  readonly code: string
  readonly path: JsonPointer
  readonly reason: string
}
