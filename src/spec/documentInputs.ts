import type { JsonPointer } from '../base/index.js'
import type { Quantity } from '../quantity/index.js'
import type { LogEvent, MachineLog, TopUp } from './machineLog.js'
import type { Seal } from './seal.js'
import type { RecordEntry, RecordedPhoto, ServiceRecord, UsedOil } from './serviceRecord.js'
import type { OfferedOil, OilContainer, Price, Stock, StockSeal } from './stock.js'
import type {
  DrainPan,
  Jack,
  MeasuringVessel,
  Socket,
  Stands,
  Toolbox,
  TorqueWrench,
  WrenchAccuracy,
  WrenchScale,
} from './toolbox.js'

/** Parts that may be written as one text. */
type PartAsText =
  | Quantity
  | RecordEntry
  | UsedOil
  | RecordedPhoto
  | LogEvent
  | TopUp
  | OilContainer
  | StockSeal
  | Seal
  | Price
  | TorqueWrench
  | WrenchScale
  | WrenchAccuracy
  | Socket
  | MeasuringVessel
  | DrainPan
  | Stands
  | Jack

/** The keys that may be omitted. */
type OmittedKeys<T> = T extends ServiceRecord
  ? 'detail'
  : T extends RecordEntry
    ? 'opened' | 'tightened' | 'seals'
    : T extends MachineLog
      ? 'name' | 'identity' | 'meters' | 'records'
      : T extends Stock
        ? 'name' | 'containers' | 'seals'
        : T extends Toolbox
          ? 'name' | 'wrenches' | 'sockets' | 'vessels' | 'pans' | 'fillers' | 'stands'
          : T extends TorqueWrench
            ? 'name' | 'accuracy'
            : OfferedOil extends T
              ? never
              : T extends { readonly name: string }
                ? 'name'
                : never

/** The values allowed at a key besides those of its own type. */
type ExtraInput<Key> = Key extends
  | 'sheet'
  | 'readings'
  | 'entries'
  | 'oil'
  | 'sample'
  | 'signature'
  | 'scales'
  ? string
  : Key extends 'tightened' | 'seals' | 'filters' | 'shields'
    ? { readonly [pointer: JsonPointer]: string }
    : Key extends 'meters' | 'pauses'
      ? readonly string[]
      : Key extends 'records'
        ? readonly LoggedRecordInput[]
        : never

type Part<T> = {
  readonly [Key in keyof T as Key extends OmittedKeys<T> ? never : Key]: Input<T[Key]> | ExtraInput<Key>
} & {
  readonly [Key in keyof T as Key extends OmittedKeys<T> ? Key : never]?: Input<T[Key]> | ExtraInput<Key>
}

/** A record in a log may also omit what the log states. */
type LoggedRecordInput = Omit<ServiceRecordInput, 'kind' | 'version' | 'id' | 'machine' | 'sheet'> &
  Partial<Pick<ServiceRecordInput, 'kind' | 'version' | 'id' | 'machine' | 'sheet'>>

type Input<T> = T extends readonly (infer Entry)[]
  ? readonly Input<Entry>[]
  : T extends object
    ? string extends keyof T
      ? { readonly [id: string]: Input<T[keyof T]> }
      : Part<T> | (T extends PartAsText ? string : never)
    : T

/**
 * A service record as input: texts instead of quantities and parts are allowed, and omitted keys. Every
 * `ServiceRecord` is valid input.
 */
export type ServiceRecordInput = Part<ServiceRecord>
/**
 * A machine log as input: texts instead of quantities and parts are allowed, and omitted keys. Every
 * `MachineLog` is valid input.
 */
export type MachineLogInput = Part<MachineLog>
/**
 * A toolbox as input: texts instead of quantities and parts are allowed, and omitted keys. Every `Toolbox` is
 * valid input.
 */
export type ToolboxInput = Part<Toolbox>
/**
 * A stock as input: texts instead of quantities and parts are allowed, and omitted keys. Every `Stock` is
 * valid input.
 */
export type StockInput = Part<Stock>
