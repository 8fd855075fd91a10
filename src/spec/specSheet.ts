import type { JsonPointer } from '../base/index.js'
import type { Figure, LengthUnit, MassUnit, TemperatureUnit, VolumeUnit } from '../quantity/index.js'
import type { Drive } from './drive.js'
import type { Filter } from './filter.js'
import type {
  Condition,
  DateText,
  DocumentHead,
  Id,
  Interval,
  LeafKind,
  Leaves,
  Oils,
  PlaceOnMachine,
  Seal,
  SourceRef,
  SpecValue,
  Tightening,
} from './leaf.js'

/** What the manual says about one machine model and its variants. */
export interface SpecSheet extends DocumentHead<'spec-sheet'> {
  /** The sheet's own revision; a log names the revision that it was kept against. */
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
  /** What kind of machine, in plain words. */
  readonly type: string
  readonly mass?: SpecValue<MassUnit>
  readonly variants: Readonly<Record<Id, Variant>>
  readonly axles: Readonly<Record<Id, { readonly name: string; readonly wheels: number }>>
  readonly supports: Readonly<Record<Id, Support>>
  /** What to secure on this machine, in this order: implement, loader, PTO, articulation lock, a brake to release. */
  readonly secure?: readonly SecuredItem[]
}

export interface SecuredItem {
  readonly item: string
  readonly how: string
  readonly when: 'before work' | 'before a run'
}

/** Where stands hold the machine, where the jack goes (absent: not stated), and the axle that this lifts. */
export interface Support {
  readonly at: string
  readonly jack?: string
  readonly axle?: Id
}

export interface Variant {
  readonly name: string
  /** Absent: nothing but the log's own word selects this variant. */
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
  /** Left, right …: the same gearcase several times over. */
  readonly instances?: Readonly<Record<Id, { readonly name: string }>>
  readonly axle?: Id
  readonly access: Access
  readonly oilSpace: OilSpace
  readonly openings: Readonly<Record<Id, Opening>>
  readonly covers?: Readonly<Record<Id, Cover>>
  readonly filters?: Readonly<Record<Id, Filter>>
  /** Ways to get the old oil out, preferred first. */
  readonly emptying: readonly Emptying[]
  readonly breather?: { readonly place: PlaceOnMachine }
  /** Shields that come off first. */
  readonly shields?: readonly Id[]
  /** Oil temperature for draining, where the manual gives one. */
  readonly drainTemperature?: SpecValue<TemperatureUnit>
  /** Oil temperature in continuous work, where the manual gives one: what the rubber of its seals must bear. */
  readonly workingTemperature?: SpecValue<TemperatureUnit>
  /** Whether bronze or brass parts run in this oil, where the manual says. */
  readonly yellowMetal?: 'yes' | 'no' | 'not stated'
}

export type Access =
  | { readonly kind: 'from the ground' }
  | { readonly kind: 'raised'; readonly supports: readonly Id[] }

export interface OwnOilSpace {
  readonly kind: 'own'
  readonly oils: Oils
  readonly fill: Fill
  /** Gearcases that oil can slowly pass to; the level settles after a run. */
  readonly passageTo?: readonly Id[]
}

/** The gearcase named in `with` owns the oil: it decides due, drain and oil. */
export interface SharedOilSpace {
  readonly kind: 'shared'
  readonly with: Id
  readonly portion?: SpecValue<VolumeUnit>
}

export type OilSpace = OwnOilSpace | SharedOilSpace

export interface Fill {
  readonly drainAndRefill: SpecValue<VolumeUnit>
  readonly dryFill?: SpecValue<VolumeUnit>
  /** Whether quantities are for one instance or for all, where the gearcase has instances. */
  readonly per?: 'instance' | 'all instances'
  readonly method: FillMethod
  readonly level?: Level
}

export type FillMethod =
  | { readonly kind: 'by quantity'; readonly opening: Id }
  | { readonly kind: 'to level hole'; readonly opening: Id; readonly below?: SpecValue<LengthUnit> }
  | { readonly kind: 'dipstick'; readonly opening: Id; readonly reading: 'screwed in' | 'resting' }
  | { readonly kind: 'sight glass'; readonly opening: Id }

export interface Level {
  readonly attitude: 'level on its wheels' | 'level on stands' | 'not stated'
  readonly temperature?: SpecValue<TemperatureUnit>
  readonly minutesAfterStop?: SpecValue<'min'>
  readonly engine: 'stopped' | 'running' | 'not stated'
  /** The level falls as oil finds its way: check again after a short run. */
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
  /** Designation as printed: `M18x1.5`, `R 1/2`, `1/2-14 NPT`; absent: the manual does not say. */
  readonly thread?: string
  /** What the thread goes into. */
  readonly housing?: 'steel' | 'cast iron' | 'aluminium' | 'not stated'
  readonly drive: Drive
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
  /** Upright, or the bottom pan of the gearcase: how it comes off without a gush of oil. */
  readonly position?: 'upright' | 'bottom' | 'not stated'
  /** It holds bearings, with their shims and preload: taken off and fitted by the manual alone. */
  readonly carriesBearings?: boolean
}

export interface FastenerSet {
  readonly count: number
  readonly thread?: string
  readonly propertyClass?: string
  readonly drive: Drive
  readonly tightening: Tightening
}

export interface Shield {
  readonly name: string
  readonly appliesTo?: Condition
  readonly fasteners: FastenerSet
  readonly place: PlaceOnMachine
  /** A guard over moving parts goes back before the machine runs; a plate under it after the last look. */
  readonly guards?: 'moving parts' | 'the underside' | 'not stated'
}

/** Events in a machine's life that make services due. */
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
  /** Writer's notes hung on the ids of actions. */
  readonly notes?: Readonly<Record<Id, string>>
}

export type CountFrom = 'completion' | 'schedule inside window' | 'schedule'

export interface Intervals {
  /** Counts from the machine's or the rebuild's zero. */
  readonly first?: Interval
  readonly repeat: Interval
  readonly severe?: SevereUse
  readonly countFrom: CountFrom
  /** How far past the limit a service may still be done before it is overdue, or early before the count moves. */
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
