import type { JsonPointer } from '../base/index.js'
import type { Figure, MassUnit } from '../quantity/index.js'
import type { Gearcase, Shield } from './gearcase.js'
import type { Condition, DateText, DocumentHead, Interval, LeafKind, Leaves } from './leaf.js'
import type { Id, SourceRef, SpecValue } from './specValue.js'

/** The manual's figures for one machine model and its variants. */
export interface SpecSheet extends DocumentHead<'spec-sheet'> {
  /** The revision of the sheet; a log names the revision it refers to. */
  readonly revision: string
  /** The machine model: make, model, variants, axles, supports, and items to secure. */
  readonly machine: Machine
  /** The documents that the figures come from, by id. */
  readonly sources: Readonly<Record<Id, Source>>
  /** The gearcases with their oil, openings and covers, by id: `front`, `rear`. */
  readonly gearcases: Readonly<Record<Id, Gearcase>>
  /** Guards and plates that are in the way, by id. */
  readonly shields?: Readonly<Record<Id, Shield>>
  /** The services with their intervals, by id: `gear-oil-change`. */
  readonly services: Readonly<Record<Id, Service>>
  /** The facts that the warranty of the machine requires in a service record. */
  readonly warranty?: WarrantyTerms
  /** Figures that differ on some machines. */
  readonly overrides?: readonly Override[]
  /** Findings that the writer accepts, with the reason. */
  readonly waivers?: readonly Waiver[]
}

/** A spec sheet and its revision. */
export interface SheetReference {
  /** The id of the sheet. */
  readonly id: Id
  /** The revision of the sheet. */
  readonly revision: string
}

/** Facts that a warranty may require in a service record. */
export const WARRANTY_FACTS = [
  'who did it',
  'photos',
  'oil batch',
  'part numbers',
  'wrench certificate',
  'signature',
] as const
export type WarrantyFact = (typeof WARRANTY_FACTS)[number]

/** The facts that the warranty of a machine requires in a service record, according to its terms. */
export interface WarrantyTerms {
  /**
   * `oil batch`: of each oil that went in; `part numbers`: of each new seal and filter; `wrench certificate`: of each torque wrench that was
   * used.
   */
  readonly asks: readonly WarrantyFact[]
  /** The source of the terms. */
  readonly source?: SourceRef
}

/** One machine model. */
export interface Machine {
  /** The maker, as on the plate. */
  readonly make: string
  /** The model, as on the plate. */
  readonly model: string
  /** The kind of machine, in plain words. */
  readonly type: string
  /** The mass that jacks and stands must carry: `450 kg`. */
  readonly mass?: SpecValue<MassUnit>
  /** The variants whose figures may differ, by id; at least one. */
  readonly variants: Readonly<Record<Id, Variant>>
  /** The axles by id: `front`, `rear`. */
  readonly axles: Readonly<
    Record<
      Id,
      {
        /** The name in plain words: `front axle`. */
        readonly name: string
        /** The number of wheels on this axle: `2`. */
        readonly wheels: number
        /** Whether its wheels may be driven onto ramps; absent if the manual does not say. */
        readonly ramps?: boolean
      }
    >
  >
  /** The places for stands, by id. */
  readonly supports: Readonly<Record<Id, Support>>
  /** Items to secure, in this order: implement, loader, PTO, articulation lock, a brake to release. */
  readonly secure?: readonly SecuredItem[]
}

/** An item to secure first. */
export interface SecuredItem {
  /** The item: `loader`. */
  readonly item: string
  /** How to secure it: `lower it to the ground`. */
  readonly how: string
  /** Before all work, or only before the machine runs. */
  readonly when: 'before work' | 'before a run'
}

/** Where the stands and the jack go, and the axle that they lift. */
export interface Support {
  /** Where the stands go: `front cross tube`. */
  readonly at: string
  /** Where the jack goes: `under the hitch`. Absent: not stated. */
  readonly jack?: string
  /** The id of the axle that is lifted. */
  readonly axle?: Id
}

/** One variant of the model. */
export interface Variant {
  /** The name in plain words: `with loader`. */
  readonly name: string
  /** The condition for this variant. If absent, only the log can select it. */
  readonly when?: Condition
}

/** A source of figures. */
export interface Source {
  /** The title as printed. */
  readonly title: string
  /** The kind of document. */
  readonly document:
    | 'owner manual'
    | 'workshop manual'
    | 'service bulletin'
    | 'parts list'
    | 'plate'
    | 'other'
  /** The edition as printed: `3`. */
  readonly edition?: string
  /** The date of the document: `2021-02-01`. */
  readonly date?: DateText
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
/** An event after which services are due at once. */
export type MachineEventKind = (typeof MACHINE_EVENT_KINDS)[number]

/** A service: its task, gearcases and intervals. */
export interface Service {
  /** The name in plain words: `gear oil change`. */
  readonly name: string
  /** Whether the oil is only checked, or changed. */
  readonly task: 'check' | 'change'
  /** The machines that have the service. Absent: all. */
  readonly appliesTo?: Condition
  /** Ids of services that count as done when this one is done: `level-check`. */
  readonly satisfies?: readonly Id[]
  /** Ids of the gearcases that are serviced. */
  readonly gearcases: readonly Id[]
  /** When the service is due. */
  readonly intervals: Intervals
  /** Events that make this service due before next use. */
  readonly events?: readonly MachineEventKind[]
  /** Supplies for the service besides oil, seals and the usual supplies: `brake cleaner`. */
  readonly supplies?: readonly string[]
  /** Ids of the gearcases to sample, while the old oil runs out of the drain: `[rear]`. */
  readonly samples?: readonly Id[]
  /** Notes by action id. */
  readonly notes?: Readonly<Record<Id, string>>
}

/** The start of the next interval. */
export type CountFrom = 'completion' | 'schedule inside window' | 'schedule'

/** When a service is due. */
export interface Intervals {
  /** The first interval, counted from first use or from a rebuild. */
  readonly first?: Interval
  /** The usual interval: `200 h, 1 year`. */
  readonly repeat: Interval
  /** The shorter interval for severe use. */
  readonly severe?: SevereUse
  /** Whether the next interval starts on the day of the work or as scheduled. */
  readonly countFrom: CountFrom
  /** How late a service may be before it is overdue, or how early without moving the schedule. */
  readonly window?: Interval
}

/** The shorter interval for severe use: a separate interval, or a factor for the usual one. */
export type SevereUse =
  | {
      readonly kind: 'interval'
      /** The interval for severe use: `100 h`. */
      readonly interval: Interval
      /** Severe use in the words of the manual: `working in water`. */
      readonly criteria: string
    }
  | {
      readonly kind: 'factor'
      /** The factor for the usual interval, as text: `0.5`. */
      readonly factor: Figure
      readonly criteria: string
      /** The source of the factor. */
      readonly source?: SourceRef
    }

/** Figures for some machines instead of the usual ones. */
export interface Override {
  /** The machines that the figures are for. */
  readonly when: Condition
  /** The figures, each with its pointer in the sheet. */
  readonly set: readonly OverrideLeaf[]
  /** The source of the difference. */
  readonly source?: SourceRef
}

/** One whole leaf and the pointer that it replaces. */
export type OverrideLeaf = {
  readonly [K in LeafKind]: {
    /** The kind of the leaf. */
    readonly kind: K
    /** The JSON Pointer in the sheet: `/gearcases/front/openings/drain/tightening`. */
    readonly path: JsonPointer
    /** The leaf for these machines. */
    readonly to: Leaves[K]
  }
}[LeafKind]

/** A finding that the writer accepts. It is reported as waived. */
export interface Waiver {
  /** The code of the finding: `torque/slip-at-plug`. */
  readonly code: string
  /** The JSON Pointer of the finding. */
  readonly path: JsonPointer
  /** Why the finding does not apply. */
  readonly reason: string
}
