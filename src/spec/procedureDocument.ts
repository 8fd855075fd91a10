import type { JsonPointer } from '../base/index.js'
import type { WheelMark } from './gearcase.js'
import type { DocumentHead, Identity } from './leaf.js'
import type { MachineEventKind, SheetReference } from './specSheet.js'
import type { Id } from './specValue.js'

/** The steps of one visit, written by hand or by `buildProcedure`. */
export interface ProcedureDocument extends DocumentHead<'procedure'> {
  /** The name of the procedure: `gear oil change, all axles`. */
  readonly name: string
  /** The spec sheet that the pointers of the steps refer to. */
  readonly sheet: SheetReference
  /** The machine that the steps are for. */
  readonly identity: Identity
  /** Ids of the services to do. */
  readonly services: readonly Id[]
  /** Limits the services to these gearcases and instances, such as those that are due. Absent: all. */
  readonly only?: readonly ServiceOnPart[]
  /** Events since the oil was changed; after some of them the machine must not run. */
  readonly events?: readonly MachineEventKind[]
  /** The steps in their order. */
  readonly steps: readonly Step[]
}

/** A service at one gearcase. */
export interface ServiceOnPart {
  /** The id of the service in the sheet: `gear-oil-change`. */
  readonly service: Id
  /** The id of the gearcase in the sheet: `front`. */
  readonly gearcase: Id
  /** The id of the instance, if the gearcase has several: `left`. */
  readonly instance?: Id
}

/** One step. */
export interface Step {
  /** The id of the step, unique in the procedure: `crack-fill`. */
  readonly id: Id
  /** The action. */
  readonly do: Action
  /** Pointer to the part of the step in the sheet. */
  readonly on?: JsonPointer
  /** The instance, and the position of the wheel mark. */
  readonly at?: {
    /** The id of the instance, if the gearcase has several: `left`. */
    readonly instance?: Id
    /** The position of the wheel mark. */
    readonly wheelMark?: WheelMark
  }
  /** Pointers to the figures of the step in the sheet, by name. */
  readonly values?: Readonly<Record<string, JsonPointer>>
  /** A note for the person who does the step. */
  readonly note?: string
}

/** The actions of steps, in the order of a usual job; `procedure/actions` gives the conditions and effects of each. */
export const ACTION_NAMES = [
  'find the variant',
  'read the manual',
  'wear protection',
  'park on level ground',
  'carry to level ground',
  'warm the oil',
  'stop the engine',
  'chock the wheels',
  'secure the machine',
  'raise the machine',
  'set on stands',
  'lower the machine',
  'drive onto ramps',
  'drive off ramps',
  'remove shield',
  'refit shield',
  'turn the wheel',
  'roll the machine',
  'clean around',
  'crack loose',
  'nip by hand',
  'place the pan',
  'take out',
  'take an oil sample',
  'let drain',
  'suck out the oil',
  'take off cover',
  'inspect the oil',
  'inspect the magnet',
  'clean the magnet',
  'take off filter',
  'inspect the filter',
  'clean the filter',
  'fit filter',
  'tighten filter',
  'clear the breather',
  'take off old seal',
  'wipe the seal face',
  'fit new seal',
  'inspect the seal',
  'apply sealant',
  'fit',
  'tighten',
  'fit cover',
  'tighten cover',
  'wait for the cure',
  'measure the oil',
  'add the additive',
  'pour the oil',
  'wait for the hose',
  'check the level',
  'top up',
  'clear away',
  'short run',
  'let settle',
  'let a leak show',
  'check for leaks',
  'wipe down',
  'take used oil away',
  'record',
] as const
export type Action = (typeof ACTION_NAMES)[number]
