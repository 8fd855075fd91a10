import type { JsonPointer } from '../base/index.js'
import type { DistanceUnit, Quantity, TorqueUnit, VolumeUnit } from '../quantity/index.js'
import type { WheelMark } from './gearcase.js'
import type { DateText, DocumentHead } from './leaf.js'
import type { SheetReference } from './specSheet.js'
import type { Id } from './specValue.js'

/** The work done at one visit. */
export interface ServiceRecord extends DocumentHead<'service-record'> {
  /** Id of the machine log. */
  readonly machine: Id
  /** The spec sheet used for the work. */
  readonly sheet: SheetReference
  /** `date and meters only`: history without details. */
  readonly detail: 'full' | 'date and meters only'
  /** The day: `2023-03-09`. */
  readonly date: DateText
  /** The meter readings. */
  readonly readings: {
    /** The hour meter: 512.6 h. */
    readonly hours?: Quantity<'h'>
    /** The distance meter: 4210 km. */
    readonly distance?: Quantity<DistanceUnit>
  }
  /** Who did the work. */
  readonly by?: string
  /** The work done, one entry for each service and gearcase. */
  readonly entries: readonly RecordEntry[]
  /** How the fasteners of removed shields were tightened; they belong to the visit, not to one gearcase. */
  readonly shields?: readonly RecordedTightening[]
  /** The hands-on time of the visit, without waiting: 85 min. */
  readonly workingTime?: Quantity<'min' | 'h'>
  /** The destination of the used oil. */
  readonly usedOil?: string
  /** The used oil by destination, with volumes and receipts: `[1.2 L to the tank, receipt K-1043]`. */
  readonly usedOilLog?: readonly UsedOil[]
  /**
   * The id of the earlier record to correct: `station-2-2023-10-06`. Values stated here replace those of the
   * same part there; omitted values stay.
   */
  readonly corrects?: Id
  /** The right date or readings of the corrected record, if they were wrong. */
  readonly corrected?: {
    /** The day of the work: `2023-10-06`. */
    readonly date?: DateText
    /** The meter readings on that day: 512.8 h. */
    readonly readings?: ServiceRecord['readings']
  }
  /** Photos of the work: `[IMG-0412.jpg]`. */
  readonly photos?: readonly RecordedPhoto[]
  /** The calibration certificates of the torque wrenches that were used. */
  readonly certificates?: readonly WrenchCertificate[]
  /** Who signed for the work: `A. Skarn`. */
  readonly signature?: RecordSignature
  /** A note for later readers. */
  readonly note?: string
}

/** A photo of the work. The file is kept elsewhere. */
export interface RecordedPhoto {
  /** The name of the file: `IMG-0412.jpg`. */
  readonly file: string
  /** The SHA-256 of the file as 64 hex digits: `e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855`. */
  readonly sha256?: string
  /** Its subject: the id of a step of the plan, or an action: `front-tighten-drain`. */
  readonly step?: string
}

/** A calibration certificate of a torque wrench. */
export interface WrenchCertificate {
  /** The id of the wrench in the toolbox: `half-inch-click`. */
  readonly tool: Id
  /** The number of the certificate: `C-2291`. */
  readonly number: string
  /** The day of the calibration: `2023-02-11`. */
  readonly date?: DateText
  /** The last day on which it is valid: `2024-02-10`. */
  readonly validTo?: DateText
}

/** A signature under a record. */
export interface RecordSignature {
  /** Who signed: `A. Skarn`. */
  readonly name: string
  /** The day of the signature: `2023-10-06`. */
  readonly date?: DateText
  /** The name of the file with the signature: `slip-2023-10-06.pdf`. */
  readonly file?: string
  /** The SHA-256 of that file as 64 hex digits: `e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855`. */
  readonly sha256?: string
}

/** Fluids that make used oil unfit for the used-oil tank if mixed into it. */
export const MIXED_FLUIDS = ['solvent', 'coolant', 'brake fluid', 'fuel', 'not known'] as const

/** Used oil that went to one destination. */
export interface UsedOil {
  /** The volume: 1.2 L. Absent: not measured. */
  readonly volume?: Quantity<VolumeUnit>
  /** The collector, or the container that it went into: `Nordfoss Collection`. */
  readonly to?: string
  /** The number of the receipt: `K-1043`. */
  readonly receipt?: string
  /**
   * The fluid mixed into it; `not known` if the oil is suspect for another reason. Keep such oil apart, and
   * never put it into the used-oil tank. Water and metal from use do not count.
   */
  readonly keptApart?: (typeof MIXED_FLUIDS)[number]
}

/** The particles on the magnet. */
export type MagnetFinding = 'no magnet' | 'clean' | 'fine paste' | 'chips' | 'pieces'
/** The appearance of the old oil. */
export type OilFinding = 'clear' | 'dark' | 'milky' | 'burnt' | 'metallic' | 'not judged'
/** The result of the leak check. */
export type LeakFinding = 'dry' | 'weeping' | 'dripping' | 'not checked'

/** The work at one gearcase. */
export interface RecordEntry {
  /** The id of the service in the sheet. */
  readonly service: Id
  /** The id of the gearcase in the sheet. */
  readonly gearcase: Id
  /** The id of the instance, if the gearcase has several: `left`. */
  readonly instance?: Id
  /** The reason if this service was not done: `the drain plug is seized`. The service then does not count. */
  readonly notDone?: string
  /** The volume drained; `not judged` after suction. */
  readonly drained?: Quantity<VolumeUnit> | 'not judged'
  /** The volume refilled: 450 mL. */
  readonly refilled?: Quantity<VolumeUnit>
  /** The oil's name, and its container if there is a stock document. */
  readonly oil?: {
    /** The name of the oil. */
    readonly name: string
    /** The id of the container in the stock. */
    readonly container?: Id
    /** The batch number on the container: `L-2231`. */
    readonly batch?: string
  }
  /** The appearance of the old oil. */
  readonly oilFinding?: OilFinding
  /** The particles on the magnet. */
  readonly magnet?: MagnetFinding
  /** The oil sample that was taken. */
  readonly sample?: RecordedSample
  /** Pointers to the opened openings and covers. Openings that were only loosened count as opened. */
  readonly opened: readonly JsonPointer[]
  /** How the plugs and bolts were tightened. */
  readonly tightened: readonly RecordedTightening[]
  /** The seals that were fitted or inspected. */
  readonly seals: readonly RecordedSeal[]
  /** The filters that were fitted or cleaned. */
  readonly filters?: readonly RecordedFilter[]
  /** The level at the end. */
  readonly level?: 'at the mark' | 'below' | 'above' | 'not checked'
  /** The result of the leak check. */
  readonly leaks?: LeakFinding
}

/** An oil sample. A correction adds its result later. */
export interface RecordedSample {
  /** The number on the bottle: `B-12`. */
  readonly bottle: string
  /** When or where the oil was taken. `mid-stream`: after the first oil and before the last. */
  readonly taken?: 'mid-stream' | 'first oil' | 'from the pan' | 'extracted' | 'not known'
  /** The laboratory: `Nordfoss Laboratory`. */
  readonly laboratory?: string
  /** The laboratory's result, in its own words: `iron 40 mg/kg, normal`. Absent if there is no result yet. */
  readonly result?: string
}

/** Ways of tightening without a figure. */
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
  /** The position of the wheel mark. */
  readonly wheelMark?: WheelMark
}

/** How one part was tightened: to a torque, by turns, according to the manual, or to an unknown torque. */
export type RecordedTightening =
  | (TighteningAt & {
      /** The way of tightening. */
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
       * `by hand`: finger tight; `without a wrench`: with a key, torque not measured; `not checked`: it may be
       * loose; `not known`: the technician does not know.
       */
      readonly kind: 'by the manual' | UnmeasuredTightening
    })

/** A tightening whose torque was not measured. */
export type UnmeasuredTightening = 'by hand' | 'without a wrench' | 'not checked' | 'not known'

/** The work on a filter. */
export interface RecordedFilter {
  /** Pointer to the filter in the sheet, such as `/gearcases/sump/filters/return`. */
  readonly on: JsonPointer
  /** Whether a new filter was fitted or the old one cleaned. */
  readonly done: 'new' | 'cleaned'
  /** The part number of the new filter: `RF-310`. */
  readonly partNumber?: string
  /** The particles in the old filter, or in the strainer before it was cleaned. */
  readonly found?: Exclude<MagnetFinding, 'no magnet'>
}

/** The work on a seal. */
export interface RecordedSeal {
  /** Pointer to the seal in the sheet, such as `/gearcases/front/openings/drain/seals/0`. */
  readonly on: JsonPointer
  /** Whether a new seal was fitted or the old one used again. */
  readonly done: 'new' | 'inspected and used again'
  /** The part number of the new seal. */
  readonly partNumber?: string
}
