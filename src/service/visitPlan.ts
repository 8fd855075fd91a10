import type { JsonPointer, Reason } from '../base/index.js'
import type { DateText } from '../calendar/index.js'
import type { DueLimit, DueLine, DueState } from '../interval/index.js'
import type { ProcedureLine } from '../procedure/index.js'
import type {
  DistanceUnit,
  Quantity,
  TemperatureUnit,
  TorqueUnit,
  Unit,
  VolumeUnit,
} from '../quantity/index.js'
import type {
  Drive,
  Filter,
  Id,
  Identity,
  IdentityFact,
  Leaf,
  LeafKind,
  LeafRole,
  OtherNumber,
  PrintedValue,
  ReplaceWhen,
  Resolved,
  Seal,
  SheetReference,
  Source,
  WarrantyTerms,
} from '../spec/index.js'
import type { PartName } from './names.js'
import type { PlannedStep } from './plannedStep.js'

/**
 * The plan of one visit to one machine, as plain JSON. It contains everything for a card; each figure of a
 * card points into it.
 */
export interface VisitPlan {
  readonly kind: 'visit-plan'
  readonly version: '1.0'
  readonly machine: PlannedMachine
  readonly today: DateText
  readonly ambient?: Quantity<TemperatureUnit>
  readonly severity: 'normal' | 'severe'
  readonly readings: {
    readonly hours?: { readonly value: number; readonly unit: 'h'; readonly date: DateText }
    readonly distance?: { readonly value: number; readonly unit: DistanceUnit; readonly date: DateText }
  }
  /** Every service of the sheet on every gearcase and instance that this machine has. */
  readonly due: readonly PlannedDue[]
  /** The services of this visit. */
  readonly work: readonly PlannedWork[]
  /** The writer's procedure, if the steps are from one; absent if the steps are built. */
  readonly procedure?: { readonly id: Id; readonly name: string }
  /** Every leaf of the sheet that the work needs, resolved for this machine. */
  readonly figures: readonly PlannedFigure[]
  readonly steps: readonly PlannedStep[]
  /** The steps joined into lines for people, in the same order. */
  readonly lines: readonly ProcedureLine[]
  readonly oil: readonly PlannedOil[]
  readonly seals: readonly PlannedSeal[]
  /** New filters to fit; absent if there are none. */
  readonly filters?: readonly PlannedFilter[]
  readonly tightenings: readonly PlannedTightening[]
  readonly tools: readonly PlannedTool[]
  /** Chocks, jack, brush and other tools that a toolbox does not list; absent if no step uses one. */
  readonly handTools?: Reason
  /** The fewest wrenches for the work, and the range of a wrench to buy for torques that none covers. */
  readonly wrenches: { readonly use: readonly Id[]; readonly reasons: readonly Reason[] }
  /** Absent if no oil is drained. */
  readonly pan?: PlannedPan
  readonly waits: readonly PlannedWait[]
  readonly consumables: readonly Reason[]
  /** Cautions for the whole visit; those of one step are with the step. */
  readonly cautions: readonly Reason[]
  /** Hands-on minutes; waiting is in `waits`. */
  readonly time: PlannedTime
  readonly usedOil: PlannedUsedOil
  readonly missing: readonly PlannedMissing[]
  readonly sources: Readonly<Record<Id, Source>>
  /** The facts that the warranty requires in the record of this visit; absent if the sheet states none. */
  readonly warranty?: WarrantyTerms
}

/** The working time of a visit, and its cost at a labour rate. */
export interface PlannedTime {
  readonly minutes: number
  /** `own records`: the median of past visits with the same work. */
  readonly basis: 'house estimate' | 'own records'
  /** The house estimate, if `minutes` is from records. */
  readonly estimate?: number
  /** Past visits with the same work and a recorded time; absent: none. */
  readonly visits?: { readonly count: number; readonly min: number; readonly max: number }
  /** At the caller's hourly rate; rounded to the decimals of the currency. */
  readonly labour?: { readonly rate: Money; readonly cost: Money }
  readonly reasons: readonly Reason[]
}

/** An amount of money; a type because an interface is not assignable to `Params`. */
export type Money = {
  /** As a decimal number: `65.5`. */
  readonly amount: number
  /** The code of ISO 4217: `EUR`. */
  readonly currency: string
}

export interface PlannedMachine {
  readonly log: Id
  readonly name: string
  readonly make: string
  readonly model: string
  readonly type: string
  readonly sheet: SheetReference
  /** The header of the sheet, such as a note that its data are invented. */
  readonly header?: string
  readonly identity: Identity
  readonly variant:
    | { readonly verdict: 'one'; readonly id: Id; readonly name: string; readonly reasons: readonly Reason[] }
    | {
        readonly verdict: 'cannot tell'
        readonly missing: readonly IdentityFact[]
        readonly candidates: readonly { readonly id: Id; readonly name: string }[]
        readonly reasons: readonly Reason[]
      }
}

export interface PlannedDue {
  readonly service: Id
  readonly serviceName: string
  readonly task: 'check' | 'change'
  readonly part: PartName
  readonly verdict: DueState
  readonly dueBy?: DueLimit
  readonly dueOn?: DateText
  readonly lines: readonly DueLine[]
  readonly reasons: readonly Reason[]
  /** The missing facts, one reason for each. */
  readonly missing: readonly Reason[]
  readonly taken: boolean
  /** Name of the chosen service that includes this one. */
  readonly coveredBy?: string
}

export interface PlannedWork {
  readonly service: Id
  readonly serviceName: string
  readonly task: 'check' | 'change'
  readonly part: PartName
  /** Pointer into this plan's `due`. */
  readonly due: JsonPointer
}

/**
 * Additives and cure times are parts of leaves; the last three are not leaves, but facts that a sheet may
 * omit.
 */
export type FigureRole = LeafRole | 'additive' | 'cure' | 'access' | 'fill method' | 'fasteners'

export interface PlannedFigure {
  readonly role: FigureRole
  readonly leaf: LeafKind
  readonly part: PartName
  /** Pointer into the base sheet; `resolved.trace.path` may point to an override. */
  readonly path: JsonPointer
  readonly resolved: Resolved<Leaf>
  /** Calculated from the first printed figure, in units that the sheet does not print. */
  readonly computed?: readonly PrintedValue<Unit>[]
}

/** A container in which an oil is sold. */
export interface SoldOil {
  /** The name of the container: `quart bottle`. */
  readonly name: string
  /** The name on the label. */
  readonly oil: string
  readonly size: Quantity<VolumeUnit>
}

export interface PlannedOil {
  readonly part: PartName
  /** Pointer into this plan's `figures` (role `oils`). */
  readonly figure: JsonPointer
  /** The permitted oil for the ambient temperature, such as `SAE 80W-90, API GL-5`; absent: unknown. */
  readonly choice?: string
  readonly instances: number
  /** Pointer into `figures` (role `refill`). */
  readonly refill: JsonPointer
  /** Oil without additive for one instance, and for all; absent if not stated or `cannot tell`. */
  readonly perInstance?: Quantity<VolumeUnit>
  readonly needed?: Quantity<VolumeUnit>
  /** The oil to measure for one instance, if it differs from the refill: without additive, or a share. */
  readonly measure?: Quantity<VolumeUnit>
  /** For one instance, if a level is checked: a tenth more than stated; above it the work stops. */
  readonly stopAt?: Quantity<VolumeUnit>
  /** Containers to open, in this order. */
  readonly take: readonly {
    readonly container: Id
    readonly name: string
    readonly volume: Quantity<VolumeUnit>
    readonly opened: boolean
  }[]
  /** The oil that is not in stock. */
  readonly buy?: {
    readonly volume: Quantity<VolumeUnit>
    readonly containers?: readonly { readonly size: Quantity<VolumeUnit>; readonly count: number }[]
    /** The containers of the chosen oil, as the stock names them; absent: not known. */
    readonly sold?: readonly SoldOil[]
  }
  readonly additive?: {
    readonly name: string
    readonly figure: JsonPointer
    readonly includedInRefill: boolean
    /** The one of the two that is added first. */
    readonly order: 'additive first' | 'oil first'
    /** For one instance, and for all; absent: not stated. */
    readonly perInstance?: Quantity<VolumeUnit>
    readonly needed?: Quantity<VolumeUnit>
  }
  readonly reasons: readonly Reason[]
}

export interface PlannedSeal {
  readonly part: PartName
  /** Pointer into this plan's `figures` (role `seal`). */
  readonly figure: JsonPointer
  readonly seal: Seal
  readonly replace: ReplaceWhen | 'cannot tell'
  readonly count: number
  /** The first entry of the stock with this seal. */
  readonly stock?: { readonly id: Id; readonly name: string; readonly have: number }
  /** The number of pieces from each entry of the stock, if more than one entry is used. */
  readonly take?: readonly { readonly id: Id; readonly count: number }[]
  /** Pieces to buy; 0 for a spare of a seal that is inspected. */
  readonly buy: number
  readonly reasons: readonly Reason[]
}

export interface PlannedFilter {
  readonly part: PartName
  readonly kind: Filter['kind']
  readonly partNumber?: string
  /** The part number that replaces it. */
  readonly supersededBy?: OtherNumber
  readonly count: number
}

export type PlannedTightening = {
  readonly part: PartName
  /** Pointer into this plan's `figures` (role `tightening`). */
  readonly figure: JsonPointer
  /** The number of fasteners of all instances. */
  readonly count: number
  readonly reasons: readonly Reason[]
} & (
  | {
      readonly verdict: 'fits' | 'fits with care'
      readonly wrench: { readonly id: Id; readonly name: string }
      /** The setting in the unit of the wrench's scale. */
      readonly setting: Quantity<TorqueUnit>
      /** The range of the true torque at this setting of the wrench, in the unit of the sheet. */
      readonly trueBand: { readonly min: number; readonly max: number; readonly unit: TorqueUnit }
      readonly drawing: TorqueDrawing
    }
  | {
      readonly verdict: 'does not fit' | 'cannot tell' | 'by turns'
      readonly wrench?: undefined
      readonly setting?: undefined
      readonly trueBand?: undefined
      readonly drawing?: undefined
    }
)

/** The drawing of one tightening, in the unit of the sheet. */
export interface TorqueDrawing {
  readonly unit: TorqueUnit
  /** One or two limits, a nominal, or a nominal with its tolerance. */
  readonly stated: { readonly low?: number; readonly aim?: number; readonly high?: number }
  readonly trueBand: { readonly low: number; readonly high: number }
  readonly setting: number
}

export interface PlannedTool {
  readonly kind: 'socket' | 'vessel' | 'pan' | 'filler' | 'stands' | 'ramps' | 'adaptor'
  readonly for: readonly PartName[]
  readonly drive?: Drive
  readonly have?: { readonly id: Id; readonly name: string }
  readonly verdict: 'fits' | 'does not fit' | 'missing' | 'cannot tell'
  readonly reasons: readonly Reason[]
}

export interface PlannedPan {
  readonly volume?: Quantity<VolumeUnit>
  readonly have?: { readonly id: Id; readonly name: string; readonly size: Quantity<VolumeUnit> }
  readonly verdict: 'fits' | 'does not fit' | 'missing' | 'cannot tell'
  readonly reasons: readonly Reason[]
}

export interface PlannedWait {
  readonly kind: 'pour' | 'drain' | 'cure' | 'settle'
  readonly part: PartName
  /** Whole seconds, rounded up; absent: cannot tell. */
  readonly seconds?: number
  /** Named parts of the time, in seconds, such as the hose filling. */
  readonly parts?: readonly { readonly name: string; readonly seconds: number }[]
  readonly reasons: readonly Reason[]
}

export interface PlannedUsedOil {
  /** The maximum volume; absent: cannot tell. */
  readonly volume?: Quantity<VolumeUnit>
  readonly reasons: readonly Reason[]
}

/** A missing fact and its effect; `not settled`: a stated torque without a setting. */
export interface PlannedMissing {
  readonly kind: 'not stated' | 'cannot tell' | 'not kept' | 'not settled'
  /** Absent if it concerns the whole visit, or several parts that the reason names. */
  readonly part?: PartName
  /** Pointer to the fact in the sheet. */
  readonly path?: JsonPointer
  readonly reason: Reason
}
