import type { DistanceUnit, Quantity, VolumeUnit } from '../quantity/index.js'
import type { DateText, DocumentHead, Identity } from './leaf.js'
import type { ServiceRecord } from './serviceRecord.js'
import type { MachineEventKind, SheetReference } from './specSheet.js'
import type { Id } from './specValue.js'

/** The history of one machine. */
export interface MachineLog extends DocumentHead<'machine-log'> {
  /** The workshop's name for this machine. */
  readonly name: string
  /** Where the machine is kept: `Depot north`. Only for lists by place. */
  readonly place?: string
  /** The spec sheet of the machine. */
  readonly sheet: SheetReference
  /** The known facts of this machine: variant, model year, serial number, market. */
  readonly identity: Identity
  /** Date of first use, from which `first` intervals are counted. Absent: not known. */
  readonly commissioned?: DateText
  /** The kind of use, if the owner has judged it by the manual's criteria. */
  readonly use?: 'normal' | 'severe'
  /** The meters of the machine. Omit a meter that it does not have. */
  readonly meters: {
    /** The hour meter. */
    readonly hours?: HourMeter
    /** The distance meter. */
    readonly distance?: DistanceMeter
  }
  /** Events of the machine or its meters. */
  readonly events?: readonly LogEvent[]
  /** The services done, each a service record. */
  readonly records: readonly ServiceRecord[]
  /** Oil that was added between services. */
  readonly topUps?: readonly TopUp[]
  /** Times out of use: meters stop, the calendar does not. */
  readonly pauses?: readonly {
    /** The first day out of use: `2022-11-01`. */
    readonly from: DateText
    /** The last day out of use: `2023-03-31`. */
    readonly to: DateText
  }[]
}

/** A reading of a meter on a day. */
export interface MeterReading {
  /** The day: `2023-03-09`. */
  readonly date: DateText
  /** The reading as a number in the unit of the meter: `512.6`. */
  readonly value: number
}

/** An hour meter and its readings. */
export interface HourMeter {
  /** Hours. */
  readonly unit: 'h'
  /** Above this value the display restarts from zero. */
  readonly rollover?: number
  /** The readings, in any order. */
  readonly readings: readonly MeterReading[]
}

/** A distance meter and its readings. */
export interface DistanceMeter {
  /** The unit that the meter shows: `km`. */
  readonly unit: DistanceUnit
  /** Above this value the display restarts from zero. */
  readonly rollover?: number
  /** The readings, in any order. */
  readonly readings: readonly MeterReading[]
}

/** One of the two meters. */
export type MeterName = 'hours' | 'distance'

/** An event: a meter was changed, reset or rolled over, or something made services due. */
export type LogEvent =
  | {
      /** The kind of event. */
      readonly kind: 'meter swap'
      /** The day: `2023-03-09`. */
      readonly date: DateText
      /** The affected meter. */
      readonly meter: MeterName
      /** The last reading of the old meter, as a number: `1204.5`. */
      readonly oldReading: number
      /** The first reading of the new meter, as a number: `0`. */
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
      /** Ids of the affected gearcases. If absent, the whole machine. */
      readonly gearcases?: readonly Id[]
      /** A note for later readers. */
      readonly note?: string
    }

/** Oil that was added between services. */
export interface TopUp {
  /** The day: `2023-03-09`. */
  readonly date: DateText
  /** The id of the gearcase in the sheet. */
  readonly gearcase: Id
  /** The id of the instance, if the gearcase has several: `left`. */
  readonly instance?: Id
  /** The volume added: 50 mL. */
  readonly volume: Quantity<VolumeUnit>
  /** The name of the oil. */
  readonly oil: string
}
