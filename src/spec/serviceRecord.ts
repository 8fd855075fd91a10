import type { JsonPointer } from '../base/index.js'
import type { DistanceUnit, Quantity, TorqueUnit, VolumeUnit } from '../quantity/index.js'
import type { WheelMark } from './gearcase.js'
import type { DateText, DocumentHead } from './leaf.js'
import type { Id } from './specValue.js'

/** A spec sheet and its revision. */
export interface SheetReference {
  /** The id of the sheet. */
  readonly id: Id
  /** The revision of the sheet that was used. */
  readonly revision: string
}

/** The work done at one visit. */
export interface ServiceRecord extends DocumentHead<'service-record'> {
  /** Id of the machine log. */
  readonly machine: Id
  /** The spec sheet that was worked by. */
  readonly sheet: SheetReference
  /** `date and meters only`: history without details. */
  readonly detail: 'full' | 'date and meters only'
  /** The day: `2023-03-09`. */
  readonly date: DateText
  /** What the meters showed. */
  readonly readings: {
    /** The hour meter: 512.6 h. */
    readonly hours?: Quantity<'h'>
    /** The meter for distance: 4210 km. */
    readonly distance?: Quantity<DistanceUnit>
  }
  /** Who did the work. */
  readonly by?: string
  /** What was done, one entry for each service and gearcase. */
  readonly entries: readonly RecordEntry[]
  /** How the fasteners of removed shields were tightened; they belong to the visit, not to one gearcase. */
  readonly shields?: readonly RecordedTightening[]
  /** How long the visit took hands-on, without waiting times: 85 min. */
  readonly workingTime?: Quantity<'min' | 'h'>
  /** Where the used oil went. */
  readonly usedOil?: string
  /** The used oil by place, with litres and receipts: `[1.2 L to the tank, receipt K-1043]`. */
  readonly usedOilLog?: readonly UsedOil[]
  /**
   * The id of the earlier record that this one corrects: `station-2-2023-10-06`. What an entry states here takes the place of the
   * same part there; what it leaves out stays.
   */
  readonly corrects?: Id
  /** The date or the readings of the corrected record, if they were wrong there. */
  readonly corrected?: {
    /** The day of the work: `2023-10-06`. */
    readonly date?: DateText
    /** What the meters showed on that day: 512.8 h. */
    readonly readings?: ServiceRecord['readings']
  }
  /** Anything that helps to understand it later. */
  readonly note?: string
}

/** Fluids that keep used oil out of the used-oil tank if they are mixed into it. */
export const MIXED_FLUIDS = ['solvent', 'coolant', 'brake fluid', 'fuel', 'not known'] as const

/** Used oil that went to one place. */
export interface UsedOil {
  /** How much: 1.2 L. Absent: not measured. */
  readonly volume?: Quantity<VolumeUnit>
  /** Who took it, or the container that it went into: `Nordfoss Collection`. */
  readonly to?: string
  /** The number of the receipt: `K-1043`. */
  readonly receipt?: string
  /**
   * The fluid that is mixed into it, `not known` if the oil is suspect for another reason. Such oil is kept apart and never goes into the
   * used-oil tank. Water and metal from use are no such fluid.
   */
  readonly keptApart?: (typeof MIXED_FLUIDS)[number]
}

/** What was on the magnet. */
export type MagnetFinding = 'no magnet' | 'clean' | 'fine paste' | 'chips' | 'pieces'
/** What the old oil looked like. */
export type OilFinding = 'clear' | 'dark' | 'milky' | 'burnt' | 'metallic' | 'not judged'
/** What the check for leaks showed. */
export type LeakFinding = 'dry' | 'weeping' | 'dripping' | 'not checked'

/** What was done at one gearcase. */
export interface RecordEntry {
  /** The id of the service in the sheet. */
  readonly service: Id
  /** The id of the gearcase in the sheet. */
  readonly gearcase: Id
  /** The id of the instance, if the gearcase has several: `left`. */
  readonly instance?: Id
  /** Why this service was not done after all: `the drain plug is seized`. Then it does not count. */
  readonly notDone?: string
  /** `not judged` after suction. */
  readonly drained?: Quantity<VolumeUnit> | 'not judged'
  /** How much oil went in: 450 mL. */
  readonly refilled?: Quantity<VolumeUnit>
  /** The oil's name, and its container if there is a stock document. */
  readonly oil?: {
    /** The name of the oil. */
    readonly name: string
    /** The id of the container in the stock. */
    readonly container?: Id
  }
  /** What the old oil looked like. */
  readonly oilFinding?: OilFinding
  /** What was on the magnet. */
  readonly magnet?: MagnetFinding
  /** The oil sample that was taken. */
  readonly sample?: RecordedSample
  /** Openings that were only cracked loose count as opened. */
  readonly opened: readonly JsonPointer[]
  /** How the plugs and bolts were tightened. */
  readonly tightened: readonly RecordedTightening[]
  /** The seals that were fitted or inspected. */
  readonly seals: readonly RecordedSeal[]
  /** The filters that were fitted or cleaned. */
  readonly filters?: readonly RecordedFilter[]
  /** The level at the end. */
  readonly level?: 'at the mark' | 'below' | 'above' | 'not checked'
  /** What the check for leaks showed. */
  readonly leaks?: LeakFinding
}

/** An oil sample; its result comes later, by a correction. */
export interface RecordedSample {
  /** The number on the bottle: `B-12`. */
  readonly bottle: string
  /** Where the oil came from: `mid-stream`, after the first oil and before the last. */
  readonly taken?: 'mid-stream' | 'first oil' | 'from the pan' | 'extracted' | 'not known'
  /** Who examines it: `Nordfoss Laboratory`. */
  readonly laboratory?: string
  /** What the laboratory found, in its words: `iron 40 mg/kg, normal`. Absent: no result yet. */
  readonly result?: string
}

/** How a part is tightened without a figure. */
export const TIGHTENED_WITHOUT_FIGURE = [
  'by the manual',
  'by hand',
  'without a wrench',
  'not checked',
  'not known',
] as const

interface TighteningAt {
  /** Pointer into the sheet: an opening, a cover, a filter or a shield. */
  readonly on: JsonPointer
  /** Where the mark of the wheel was. */
  readonly wheelMark?: WheelMark
}

/** How one part was tightened: to a torque, by turns, as the manual says, or in a way that leaves its torque unknown. */
export type RecordedTightening =
  | (TighteningAt & {
      /** How it was tightened. */
      readonly kind: 'torque set'
      /** The torque that the wrench was set to. */
      readonly torque: Quantity<TorqueUnit>
      /** The id of the wrench in the toolbox. */
      readonly tool: Id
    })
  | (TighteningAt & {
      readonly kind: 'turns'
      /** Turns past finger tight, as a number: `1.25`. */
      readonly turns: number
    })
  | (TighteningAt & {
      /**
       * `by hand`: finger tight; `without a wrench`: tight with a key, the torque not measured; `not checked`: it may be loose;
       * `not known`: the technician cannot say.
       */
      readonly kind: 'by the manual' | UnmeasuredTightening
    })

/** A tightening whose torque was not measured. */
export type UnmeasuredTightening = 'by hand' | 'without a wrench' | 'not checked' | 'not known'

/** What was done with a filter. */
export interface RecordedFilter {
  /** Pointer to the filter in the sheet, such as `/gearcases/sump/filters/return`. */
  readonly on: JsonPointer
  /** Whether a new one was fitted, or the old one cleaned. */
  readonly done: 'new' | 'cleaned'
  /** The part number of the new one: `RF-310`. */
  readonly partNumber?: string
  /** The particles in the old filter, or in the strainer before it was cleaned. */
  readonly found?: Exclude<MagnetFinding, 'no magnet'>
}

/** What was done with a seal. */
export interface RecordedSeal {
  /** Pointer to the seal in the sheet, such as `/gearcases/front/openings/drain/seals/0`. */
  readonly on: JsonPointer
  /** Whether a new one was fitted, or the old one used again. */
  readonly done: 'new' | 'inspected and used again'
  /** The part number of the new one. */
  readonly partNumber?: string
}
