/** One comparison. Times are CPU time of one call in microseconds, one for each round; both sides ran in turns. */
export interface BenchRow {
  readonly what: string
  readonly times: readonly number[]
  /** What does the same, or as much of it as a reader would write by hand. Absent: there is nothing to compare with. */
  readonly peer?: { readonly name: string; readonly times: readonly number[] }
  /** The largest ratio to the peer that counts as reached. */
  readonly goal?: number
  /** The longest time that counts as reached, where the goal is a time. */
  readonly goalMicros?: number
}

/** One figure of an item by the number of items: its CPU time in microseconds, or the most memory of the process in MiB. */
export interface SizeRow {
  readonly what: string
  /** `record`, `sheet`. */
  readonly item: string
  readonly sizes: readonly (readonly [count: number, value: number])[]
}

export interface BenchResult {
  readonly rows: readonly BenchRow[]
  /** Microseconds of one item. */
  readonly growth?: readonly SizeRow[]
  /** MiB of the process. */
  readonly memory?: readonly SizeRow[]
  /** How the figures were found, if not as all others. */
  readonly notes?: readonly string[]
}

/** A benchmark; `heavy`: also the sizes that take minutes. */
export type Bench = (options: { readonly heavy: boolean }) => BenchResult | Promise<BenchResult>
