import type { DateText } from '../calendar/index.js'
import type { DistanceUnit, Figure, Quantity } from '../quantity/index.js'
import type { CountFrom, Id, Interval, MachineEventKind, MachineLog, Resolved } from '../spec/index.js'

/** The intervals of one service, resolved for one machine. */
export interface DueIntervals {
  readonly first?: Resolved<Interval>
  readonly repeat: Resolved<Interval>
  readonly countFrom: CountFrom
  readonly window?: Resolved<Interval>
  readonly severe?:
    | { readonly kind: 'interval'; readonly interval: Resolved<Interval>; readonly criteria: string }
    | { readonly kind: 'factor'; readonly factor: Figure; readonly criteria: string }
}

/** One service on one gearcase, or one instance of it, of one machine. */
export interface IntervalFacts {
  readonly intervals: DueIntervals
  readonly log: MachineLog
  readonly service: Id
  /** Other services that count as this one. */
  readonly doneBy?: readonly Id[]
  readonly gearcase: Id
  readonly instance?: Id
  /** Events that make the service due before next use. */
  readonly events?: readonly MachineEventKind[]
  readonly today: DateText
}

/** The caller's choices; there are no defaults. */
export interface DueOptions {
  /** When a service is due soon; `{}`: never. `fraction` is a share of the interval, above 0 and at most 1. */
  readonly soon: {
    readonly hours?: number
    readonly distance?: Quantity<DistanceUnit>
    readonly days?: number
    readonly fraction?: number
  }
  /** A reading older than this many days of use (without pauses) never supports `not due`. */
  readonly staleAfter: { readonly days: number }
  readonly severity: 'normal' | 'severe'
}
