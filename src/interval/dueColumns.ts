/** Unknown day. */
export const NO_DAY = -2_147_483_648

/**
 * One service of many machines, in columns of plain numbers: days are day numbers (1970-01-01 is 0; `NO_DAY` if not
 * known), hours are in 1/1000 h and distances in µm (NaN if not known, or if there is no such limit). `writeDueRow` fills them.
 */
export interface DueColumns {
  readonly length: number
  readonly lastDay: Int32Array
  readonly lastHours: Float64Array
  readonly hours: Float64Array
  readonly hoursDay: Int32Array
  readonly everyHours: Float64Array
  readonly windowHours: Float64Array
  readonly lastDistance: Float64Array
  readonly distance: Float64Array
  readonly distanceDay: Int32Array
  readonly everyDistance: Float64Array
  readonly windowDistance: Float64Array
  /** −1: no calendar limit. */
  readonly everyMonths: Int32Array
  readonly everyDays: Int32Array
  readonly windowMonths: Int32Array
  readonly windowDays: Int32Array
  readonly eventDay: Int32Array
  /**
   * A sum of flags: 1 no hour meter, 2 no odometer, 4 an unusable field (the row is never `due soon` or
   * `not due`).
   */
  readonly untracked: Uint8Array
}

/** Verdicts by number, as in `DueColumnVerdicts.verdict`. */
export const DUE_STATES = ['overdue', 'due', 'cannot tell', 'due soon', 'not due'] as const

/** Limits by number, as in `DueColumnVerdicts.dueBy`; 0: cannot tell. */
export const DUE_LIMITS = [undefined, 'hours', 'distance', 'period', 'event'] as const

export interface DueColumnVerdicts {
  /** Index into `DUE_STATES`. */
  readonly verdict: Uint8Array
  /** Index into `DUE_LIMITS`. */
  readonly dueBy: Uint8Array
  /** Day number on which that limit is reached, or `NO_DAY`. */
  readonly dueDay: Int32Array
}
