import { refuse, requireObject } from '../base/index.js'

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

type ColumnName = Exclude<keyof DueColumns, 'length'>

/** The type of each column by its tag, since `instanceof` fails for arrays of another frame. */
const COLUMN_TYPES: { readonly [Column in ColumnName]: DueColumns[Column][typeof Symbol.toStringTag] } = {
  lastDay: 'Int32Array',
  lastHours: 'Float64Array',
  hours: 'Float64Array',
  hoursDay: 'Int32Array',
  everyHours: 'Float64Array',
  windowHours: 'Float64Array',
  lastDistance: 'Float64Array',
  distance: 'Float64Array',
  distanceDay: 'Int32Array',
  everyDistance: 'Float64Array',
  windowDistance: 'Float64Array',
  everyMonths: 'Int32Array',
  everyDays: 'Int32Array',
  windowMonths: 'Int32Array',
  windowDays: 'Int32Array',
  eventDay: 'Int32Array',
  untracked: 'Uint8Array',
}

/** Throws if the columns do not have the types and lengths from `createDueColumns`. */
export function requireDueColumns(columns: DueColumns): void {
  requireObject('columns', columns)
  const { length } = columns
  if (!Number.isInteger(length) || length < 0)
    throw refuse('columns.length', length, 'a whole number from 0', 'number')
  for (const name of Object.keys(COLUMN_TYPES) as ColumnName[]) {
    const column = columns[name]
    const kind = COLUMN_TYPES[name]
    if (column?.[Symbol.toStringTag] !== kind || !(column.length >= length))
      throw refuse(`columns.${name}`, column, `${kind} of ${length} rows or more`)
  }
}
