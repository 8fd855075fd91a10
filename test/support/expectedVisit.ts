/** A table of `test/expected/`, made by hand: the expected result of each visit to one example machine. */
export interface ExpectedTable {
  readonly note: string
  readonly visits: readonly ExpectedVisit[]
}

/** Every row has its calculation next to it, for people; it is not compared. */
export interface ExpectedVisit {
  /** Name of the log's file in the machine's folder, without its extension. */
  readonly log: string
  readonly what: string
  readonly variant: { readonly expected: string }
  readonly due: readonly ExpectedDue[]
  readonly work: { readonly expected: readonly (readonly [string, string])[] }
  readonly refills: readonly {
    readonly gearcase: string
    readonly path: string
    readonly value: string
    readonly unit: string
    readonly printed: readonly [string, string]
  }[]
  /** Paths with an override: the path in the base sheet, and the path of the value that applies. */
  readonly places?: readonly { readonly on: string; readonly path: string }[]
  readonly additive?: {
    readonly gearcase: string
    readonly oilsFrom: string
    readonly name: string
    readonly volume: string
    readonly unit: string
    readonly includedInRefill: boolean
  }
  readonly tightenings: readonly {
    readonly on: string
    readonly count: number
    readonly verdict: string
    readonly wrench?: string
    readonly setting?: number
    readonly unit?: string
    /** The sheet's unit, if the wrench is set on another scale. */
    readonly bandUnit?: string
    readonly trueBand?: readonly [number, number]
    /** From finger tight, as printed. */
    readonly turns?: readonly [string, string]
  }[]
  readonly wrenches: { readonly expected: readonly string[] }
  readonly tools: readonly { readonly kind: string; readonly have?: string; readonly verdict: string }[]
  readonly vessels: readonly {
    readonly gearcase: string
    readonly have: string
    readonly verdict: string
  }[]
  readonly oil: readonly {
    readonly choice: string
    readonly neededMl: number
    readonly take: readonly { readonly container: string; readonly opened: boolean; readonly ml: number }[]
    readonly shortMl: number
    readonly buy: readonly { readonly value: number; readonly unit: string; readonly count: number }[]
  }[]
  readonly seals: readonly {
    /** Part number, or the product's name for sealants. */
    readonly part: string
    readonly on: Readonly<Record<string, number>>
    readonly count: number
    readonly have: number
    readonly buy: number
  }[]
  readonly pour?: {
    readonly rows: readonly {
      readonly gearcase: string
      readonly hoseFills: number
      readonly funnelEmpties: number
      readonly hoseEmpties: number
      readonly totalWhole: number
    }[]
  }
  readonly waits: readonly { readonly kind: string; readonly on: string; readonly seconds?: number }[]
  readonly pan?: { readonly volumeMl: number; readonly have: string; readonly verdict: string }
  readonly lifts: { readonly expected: number }
  readonly missing: readonly {
    readonly kind: string
    readonly code: string
    /** The inner reason, if the fact comes from another module. */
    readonly reason?: string
    readonly path?: string
    readonly on: readonly string[]
    readonly times: number
  }[]
  readonly findings: readonly { readonly code: string; readonly path: string }[]
}

export interface ExpectedDue {
  readonly service: string
  /** Such as `hub left`. */
  readonly gearcases: readonly string[]
  readonly state: string
  readonly dueBy?: string
  readonly dueOn?: string
  readonly hours?: {
    readonly state?: string
    readonly from?: number
    readonly limit: number
    readonly duePoint: number
    readonly used: number
    readonly left: number
    readonly overdueAfter?: number
  }
  readonly distance?: {
    readonly state?: string
    readonly from?: number
    readonly limitKm: number
    readonly duePointKm: number
    readonly usedKm: number
    readonly leftKm: number
    readonly overdueAfterKm?: number
  }
  readonly period?: {
    readonly state?: string
    readonly from?: string
    readonly limit?: string
    readonly duePoint: string
    readonly leftDays: number
    readonly overdueAfter?: string
  }
  readonly event?: { readonly state?: string; readonly date: string }
}
