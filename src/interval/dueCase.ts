import type { Reason } from '../base/index.js'
import type { DateText } from '../calendar/index.js'
import type { ChosenLimits } from './chooseLimits.js'
import type { DueLine } from './dueVerdict.js'
import type { DueOptions, IntervalFacts } from './intervalFacts.js'

/** Where a count may begin: a completion, or the machine's or the rebuild's zero. */
export interface Origin {
  readonly since: NonNullable<DueLine['since']>
  /** NaN: not known. */
  readonly day: number
  /** Empty: not known. */
  readonly date: DateText
  /** Index of the record in the log; −1: not a record. */
  readonly record: number
}

/** What one judgement needs, calculated once for all its lines. */
export interface DueCase {
  readonly facts: IntervalFacts
  readonly options: DueOptions
  readonly today: number
  readonly limits: ChosenLimits
  /** Completions that the count starts from: those after the rebuild, where `first` counts from one. */
  readonly completions: readonly Origin[]
  /** The machine's or the rebuild's zero. */
  readonly zero: Origin
  /** Where the count began: the last completion, else the zero. */
  readonly start: Origin
  readonly reasons: Reason[]
  readonly missing: Reason[]
}
