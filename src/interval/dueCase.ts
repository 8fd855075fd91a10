import type { Reason } from '../base/index.js'
import type { DateText } from '../calendar/index.js'
import type { ChosenLimits } from './chooseLimits.js'
import type { DueReaders } from './dueReaders.js'
import type { DueLine } from './dueVerdict.js'
import type { DueOptions, IntervalFacts } from './intervalFacts.js'

/** A possible start of the count: a completion, first use, or a rebuild. */
export interface CountOrigin {
  readonly since: NonNullable<DueLine['since']>
  /** NaN: unknown. */
  readonly day: number
  /** Empty: unknown. */
  readonly date: DateText
  /** Index of the record in the log; −1: not a record. */
  readonly record: number
}

/** The facts of one judgement, calculated once for all its lines. */
export interface DueCase {
  readonly facts: IntervalFacts
  readonly options: DueOptions
  readonly readers: DueReaders
  readonly today: number
  readonly limits: ChosenLimits
  /** Completions; if `first` counts from a rebuild, only those after it. */
  readonly completions: readonly CountOrigin[]
  /** First use, or the rebuild from which `first` counts. */
  readonly origin: CountOrigin
  /** The start of the count: the last completion, otherwise `origin`. */
  readonly start: CountOrigin
  readonly reasons: Reason[]
  readonly missing: Reason[]
}
