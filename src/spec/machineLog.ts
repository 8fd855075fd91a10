import type { DistanceUnit, Quantity, VolumeUnit } from '../quantity/index.js'
import type { DateText, DocumentHead, Id, Identity } from './leaf.js'
import type { ServiceRecord, SheetReference } from './serviceRecord.js'
import type { MachineEventKind } from './specSheet.js'

/** The history of one machine. */
export interface MachineLog extends DocumentHead<'machine-log'> {
  /** The workshop's name for this machine. */
  readonly name: string
  readonly sheet: SheetReference
  readonly identity: Identity
  /** Date of first use, from which `first` intervals are counted. Absent: not known. */
  readonly commissioned?: DateText
  /** The kind of use, if the owner has judged it by the manual's criteria. */
  readonly use?: 'normal' | 'severe'
  /** A meter that the machine does not have is absent. */
  readonly meters: { readonly hours?: HourMeter; readonly distance?: DistanceMeter }
  readonly events?: readonly LogEvent[]
  readonly records: readonly ServiceRecord[]
  readonly topUps?: readonly TopUp[]
  /** Times out of use: meters stop, the calendar does not. */
  readonly pauses?: readonly { readonly from: DateText; readonly to: DateText }[]
}

export interface MeterReading {
  readonly date: DateText
  readonly value: number
}

export interface HourMeter {
  readonly unit: 'h'
  /** Above this value the display restarts from zero. */
  readonly rollover?: number
  readonly readings: readonly MeterReading[]
}

export interface DistanceMeter {
  readonly unit: DistanceUnit
  readonly rollover?: number
  readonly readings: readonly MeterReading[]
}

export type MeterName = 'hours' | 'distance'

export type LogEvent =
  | {
      readonly kind: 'meter swap'
      readonly date: DateText
      readonly meter: MeterName
      readonly oldReading: number
      readonly newReading: number
    }
  | {
      readonly kind: 'meter reset'
      readonly date: DateText
      readonly meter: MeterName
      readonly oldReading: number
    }
  | { readonly kind: 'meter rollover'; readonly date: DateText; readonly meter: MeterName }
  | {
      readonly kind: MachineEventKind
      readonly date: DateText
      /** Absent: the whole machine. */
      readonly gearcases?: readonly Id[]
      readonly note?: string
    }

export interface TopUp {
  readonly date: DateText
  readonly gearcase: Id
  readonly instance?: Id
  readonly volume: Quantity<VolumeUnit>
  readonly oil: string
}
