import { refuse } from '../base/index.js'
import { type DateText, dayNumberOf } from '../calendar/index.js'
import type { DistanceUnit } from '../quantity/index.js'
import { checkDueColumns } from './checkDueColumns.js'
import { type DueColumns, NO_DAY } from './dueColumns.js'
import { LARGEST_COUNT, type MeterUnit, meterCount } from './meterCount.js'
import { requireObject } from './requireObject.js'

/**
 * One service of one machine, flat, as a database or a line of JSON holds it. Absent and null are the same: not known, or
 * no such limit. Meters are totals, through swaps and rollovers; a machine never serviced has its first use as `lastDate`
 * and 0 as its last readings. With no later reading, that of the last service is the newest. Counted from completion.
 */
export interface DueRow {
  readonly id?: string | number | null
  readonly lastDate?: DateText | null
  readonly lastHours?: number | null
  readonly lastDistance?: number | null
  readonly hours?: number | null
  readonly hoursDate?: DateText | null
  readonly distance?: number | null
  readonly distanceDate?: DateText | null
  /** Of `lastDistance` and `distance`; needed where one of them is given. */
  readonly distanceUnit?: DistanceUnit | null
  readonly everyHours?: number | null
  readonly everyDistance?: number | null
  /** Of `everyDistance` and `windowDistance`; needed where one of them is given. */
  readonly everyDistanceUnit?: DistanceUnit | null
  readonly everyMonths?: number | null
  readonly everyDays?: number | null
  readonly windowHours?: number | null
  readonly windowDistance?: number | null
  readonly windowMonths?: number | null
  readonly windowDays?: number | null
  /** An event that makes the service due before next use, where it is later than the last service. */
  readonly eventDate?: DateText | null
  readonly noHourMeter?: boolean | null
  readonly noOdometer?: boolean | null
}

/**
 * Writes one flat row into columns.
 *
 * @param columns - from `createDueColumns`
 * @param index - which row, 0 to `columns.length` − 1
 * @param row - the row's facts; meters 0 to 1,000,000,000 h or 9,000,000 km, periods whole and not negative
 * @returns the names of fields that hold no usable value: they are written as not known, which makes their limit `cannot tell`
 * @throws TypeError, RangeError when `columns` or `row` are none, or `index` is out of range
 *
 * Source: house rule.
 *
 * @example
 * ```ts
 * // Which field of this row cannot be used?
 * import { createDueColumns, writeDueRow } from 'drivetrain-service/v1/interval/fleet'
 * writeDueRow(createDueColumns(1), 0, { lastDate: '2031-02-30', everyMonths: 6 }) // => ['lastDate']
 * ```
 */
export function writeDueRow(columns: DueColumns, index: number, row: DueRow): readonly string[] {
  // What is no column shows in the writing: looking before would cost every row.
  let failure: unknown
  try {
    if (Number.isInteger(index) && index >= 0 && index < columns.length && typeof row === 'object')
      return writeFields(columns, index, row)
  } catch (error) {
    failure = error
  }
  checkDueColumns(columns)
  requireObject('row', row)
  throw failure ?? refuse('index', index, `a whole number from 0 to ${columns.length - 1}`, 'number')
}

function writeFields(columns: DueColumns, index: number, row: DueRow): readonly string[] {
  let unusable: string[] | undefined
  const refuseField = (field: string): void => {
    unusable ??= []
    unusable.push(field)
  }
  const day = (field: string, date: unknown): number => {
    if (date === undefined || date === null) return NO_DAY
    const number = typeof date === 'string' ? dayNumberOf(date) : Number.NaN
    if (!Number.isNaN(number)) return number
    refuseField(field)
    return NO_DAY
  }
  const counts = (
    field: string,
    value: unknown,
    unit: MeterUnit | null | undefined,
    most: number,
    absent: number,
  ): number => {
    if (value === undefined || value === null) return absent
    const count =
      typeof value === 'number' && (unit === 'h' || unit === 'km' || unit === 'mi')
        ? meterCount(value, unit)
        : -1
    if (count >= 0 && count <= most) return count
    refuseField(field)
    return Number.NaN
  }
  const whole = (field: string, value: unknown): number => {
    if (value === undefined || value === null) return 0
    if (typeof value === 'number' && Number.isInteger(value) && value >= 0 && value <= 9_999_999) return value
    refuseField(field)
    return 0
  }
  const { hours: mostHours, distance: mostDistance } = LARGEST_COUNT
  const { distanceUnit, everyDistanceUnit } = row
  columns.lastDay[index] = day('lastDate', row.lastDate)
  columns.lastHours[index] = counts('lastHours', row.lastHours, 'h', mostHours, Number.NaN)
  // With no later reading, the one of the last service is the newest that is known.
  const hoursRead = (row.hours ?? undefined) !== undefined
  columns.hours[index] = counts('hours', row.hours, 'h', mostHours, columns.lastHours[index] ?? Number.NaN)
  columns.hoursDay[index] = hoursRead ? day('hoursDate', row.hoursDate) : (columns.lastDay[index] ?? NO_DAY)
  columns.everyHours[index] = limit(
    counts('everyHours', row.everyHours, 'h', mostHours, Number.NaN),
    row.everyHours,
  )
  columns.windowHours[index] = counts('windowHours', row.windowHours, 'h', mostHours, 0)
  columns.lastDistance[index] = counts(
    'lastDistance',
    row.lastDistance,
    distanceUnit,
    mostDistance,
    Number.NaN,
  )
  const distanceRead = (row.distance ?? undefined) !== undefined
  columns.distance[index] = counts(
    'distance',
    row.distance,
    distanceUnit,
    mostDistance,
    columns.lastDistance[index] ?? Number.NaN,
  )
  columns.distanceDay[index] = distanceRead
    ? day('distanceDate', row.distanceDate)
    : (columns.lastDay[index] ?? NO_DAY)
  columns.everyDistance[index] = limit(
    counts('everyDistance', row.everyDistance, everyDistanceUnit, mostDistance, Number.NaN),
    row.everyDistance,
  )
  columns.windowDistance[index] = counts(
    'windowDistance',
    row.windowDistance,
    everyDistanceUnit,
    mostDistance,
    0,
  )
  const period = (row.everyMonths ?? undefined) !== undefined || (row.everyDays ?? undefined) !== undefined
  columns.everyMonths[index] = period ? whole('everyMonths', row.everyMonths) : -1
  columns.everyDays[index] = period ? whole('everyDays', row.everyDays) : 0
  columns.windowMonths[index] = whole('windowMonths', row.windowMonths)
  columns.windowDays[index] = whole('windowDays', row.windowDays)
  columns.eventDay[index] = day('eventDate', row.eventDate)
  columns.untracked[index] = (row.noHourMeter === true ? 1 : 0) + (row.noOdometer === true ? 2 : 0)
  return unusable ?? NOTHING
}

const NOTHING: readonly string[] = []

/** A limit that is given but not usable must not look like no limit: 0 makes it `cannot tell`. */
function limit(count: number, given: unknown): number {
  return Number.isNaN(count) && given !== undefined && given !== null ? 0 : count
}
