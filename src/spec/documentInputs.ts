import type { JsonPointer } from '../base/index.js'
import type { Quantity } from '../quantity/index.js'
import type { RecordEntry, ServiceRecord } from './serviceRecord.js'

/** The keys that may be left out. */
type LeftOut<T> = T extends ServiceRecord
  ? 'detail'
  : T extends RecordEntry
    ? 'opened' | 'tightened' | 'seals'
    : never

/** What a writer may put at a key besides what the value itself may be. */
type AtKey<Key> = Key extends 'sheet' | 'readings' | 'entries' | 'oil'
  ? string
  : Key extends 'tightened' | 'seals' | 'filters' | 'shields'
    ? { readonly [pointer: JsonPointer]: string }
    : never

type Part<T> = {
  readonly [Key in keyof T as Key extends LeftOut<T> ? never : Key]: Input<T[Key]> | AtKey<Key>
} & {
  readonly [Key in keyof T as Key extends LeftOut<T> ? Key : never]?: Input<T[Key]> | AtKey<Key>
}

type Input<T> = T extends Quantity | RecordEntry
  ? Part<T> | string
  : T extends readonly (infer Entry)[]
    ? readonly Input<Entry>[]
    : T extends object
      ? Part<T>
      : T

/** A service record as a writer may give it: texts in place of quantities and parts, and gaps. Every `ServiceRecord` is one. */
export type ServiceRecordInput = Part<ServiceRecord>
