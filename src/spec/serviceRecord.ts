import type { JsonPointer } from '../base/index.js'
import type { DistanceUnit, Quantity, TorqueUnit, VolumeUnit } from '../quantity/index.js'
import type { DateText, DocumentHead, Id } from './leaf.js'
import type { WheelMark } from './specSheet.js'

export interface SheetReference {
  readonly id: Id
  readonly revision: string
}

/** The work done at one visit. */
export interface ServiceRecord extends DocumentHead<'service-record'> {
  /** Id of the machine log. */
  readonly machine: Id
  readonly sheet: SheetReference
  /** `date and meters only`: history without details. */
  readonly detail: 'full' | 'date and meters only'
  readonly date: DateText
  readonly readings: { readonly hours?: Quantity<'h'>; readonly distance?: Quantity<DistanceUnit> }
  readonly by?: string
  readonly entries: readonly RecordEntry[]
  /** How the fasteners of removed shields were tightened; they belong to the visit, not to one gearcase. */
  readonly shields?: readonly RecordedTightening[]
  readonly usedOil?: string
  readonly note?: string
}

export type MagnetFinding = 'no magnet' | 'clean' | 'fine paste' | 'chips' | 'pieces'
export type OilFinding = 'clear' | 'dark' | 'milky' | 'burnt' | 'metallic' | 'not judged'
export type LeakFinding = 'dry' | 'weeping' | 'dripping' | 'not checked'

export interface RecordEntry {
  readonly service: Id
  readonly gearcase: Id
  readonly instance?: Id
  /** `not judged` after suction. */
  readonly drained?: Quantity<VolumeUnit> | 'not judged'
  readonly refilled?: Quantity<VolumeUnit>
  /** The oil's name, and its container if there is a stock document. */
  readonly oil?: { readonly name: string; readonly container?: Id }
  readonly oilFinding?: OilFinding
  readonly magnet?: MagnetFinding
  /** Openings that were only cracked loose count as opened. */
  readonly opened: readonly JsonPointer[]
  readonly tightened: readonly RecordedTightening[]
  readonly seals: readonly RecordedSeal[]
  readonly filters?: readonly RecordedFilter[]
  readonly level?: 'at the mark' | 'below' | 'above' | 'not checked'
  readonly leaks?: LeakFinding
}

interface TighteningAt {
  /** Pointer into the sheet: an opening, a cover, a filter or a shield. */
  readonly on: JsonPointer
  readonly wheelMark?: WheelMark
}

export type RecordedTightening =
  | (TighteningAt & { readonly kind: 'torque set'; readonly torque: Quantity<TorqueUnit>; readonly tool: Id })
  | (TighteningAt & { readonly kind: 'turns'; readonly turns: number })
  | (TighteningAt & { readonly kind: 'by the manual' })

export interface RecordedFilter {
  /** Pointer to the filter in the sheet, such as `/gearcases/sump/filters/return`. */
  readonly on: JsonPointer
  readonly done: 'new' | 'cleaned'
  readonly partNumber?: string
  /** The particles in the old filter, or in the strainer before it was cleaned. */
  readonly found?: Exclude<MagnetFinding, 'no magnet'>
}

export interface RecordedSeal {
  /** Pointer to the seal in the sheet, such as `/gearcases/front/openings/drain/seals/0`. */
  readonly on: JsonPointer
  readonly done: 'new' | 'inspected and used again'
  readonly partNumber?: string
}
