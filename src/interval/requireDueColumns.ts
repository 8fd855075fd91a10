import { refuse, requireObject } from '../base/index.js'
import type { DueColumns } from './dueColumns.js'

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
