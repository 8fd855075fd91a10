import { refuse, requireObject } from '../base/index.js'
import { dayNumberOf } from '../calendar/index.js'
import { type DueColumns, NO_DAY, requireDueColumns } from './dueColumns.js'
import { DUE_ROW_FIELDS, type DueRow, suggestFields } from './dueRow.js'
import { MAX_METER_COUNT, type MeterUnit, meterCount } from './meterCount.js'

/**
 * Writes one flat row into columns.
 *
 * @param columns - from `createDueColumns`
 * @param index - the row, 0 to `columns.length` − 1
 * @param row - the row's facts; meters 0 to 1,000,000,000 h or 9,000,000 km, periods whole and not negative
 * @returns the names of fields without a usable value, and of unknown keys that seem to mean a field: a
 *   misspelt field, or a limit or event that a row does not have, such as `everyYears`. With any of these,
 *   the row is `cannot tell` unless another limit makes it due. Other keys, such as a customer's name, are
 *   ignored
 * @throws TypeError, RangeError if `columns` is not a set of columns, `row` is not an object, or `index` is out of range
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
  // A bad column fails on writing: checking it first would slow every row.
  let failure: unknown
  try {
    if (Number.isInteger(index) && index >= 0 && index < columns.length && typeof row === 'object')
      return writeFields(columns, index, row)
  } catch (error) {
    failure = error
  }
  requireDueColumns(columns)
  requireObject('row', row)
  throw failure ?? refuse('index', index, `a whole number from 0 to ${columns.length - 1}`, 'number')
}

function writeFields(columns: DueColumns, index: number, row: DueRow): readonly string[] {
  let unusable: string[] | undefined
  const rejectField = (field: string): void => {
    unusable ??= []
    unusable.push(field)
  }
  const readDayNumber = (field: string, date: unknown): number => {
    if (date === undefined || date === null) return NO_DAY
    const number = typeof date === 'string' ? dayNumberOf(date) : NaN
    if (!Number.isNaN(number)) return number
    rejectField(field)
    return NO_DAY
  }
  const readCounts = (
    field: string,
    value: unknown,
    unit: MeterUnit | null | undefined,
    absentValue = NaN,
    unusable = NaN,
  ): number => {
    if (value === undefined || value === null) return absentValue
    if (typeof value === 'number' && (unit === 'h' || unit === 'km' || unit === 'mi')) {
      const count = meterCount(value, unit)
      if (count >= 0 && count <= (unit === 'h' ? MAX_METER_COUNT.hours : MAX_METER_COUNT.distance))
        return count
    }
    rejectField(field)
    return unusable
  }
  const readWholeNumber = (field: string, value: unknown): number => {
    if (value === undefined || value === null) return 0
    if (typeof value === 'number' && Number.isInteger(value) && value >= 0 && value <= 9_999_999) return value
    rejectField(field)
    return 0
  }
  const { distanceUnit, everyDistanceUnit } = row
  const lastDay = readDayNumber('lastDate', row.lastDate)
  columns.lastDay[index] = lastDay
  const lastHours = readCounts('lastHours', row.lastHours, 'h')
  columns.lastHours[index] = lastHours
  // Without a later reading, use the reading of the last service.
  columns.hours[index] = readCounts('hours', row.hours, 'h', lastHours)
  columns.hoursDay[index] = isPresent(row.hours) ? readDayNumber('hoursDate', row.hoursDate) : lastDay
  // An unusable limit must not look like no limit: 0 makes it `cannot tell`.
  columns.everyHours[index] = readCounts('everyHours', row.everyHours, 'h', NaN, 0)
  columns.windowHours[index] = readCounts('windowHours', row.windowHours, 'h', 0)
  const lastDistance = readCounts('lastDistance', row.lastDistance, distanceUnit)
  columns.lastDistance[index] = lastDistance
  columns.distance[index] = readCounts('distance', row.distance, distanceUnit, lastDistance)
  columns.distanceDay[index] = isPresent(row.distance)
    ? readDayNumber('distanceDate', row.distanceDate)
    : lastDay
  columns.everyDistance[index] = readCounts('everyDistance', row.everyDistance, everyDistanceUnit, NaN, 0)
  columns.windowDistance[index] = readCounts('windowDistance', row.windowDistance, everyDistanceUnit, 0)
  const period = isPresent(row.everyMonths) || isPresent(row.everyDays)
  columns.everyMonths[index] = period ? readWholeNumber('everyMonths', row.everyMonths) : -1
  columns.everyDays[index] = period ? readWholeNumber('everyDays', row.everyDays) : 0
  columns.windowMonths[index] = readWholeNumber('windowMonths', row.windowMonths)
  columns.windowDays[index] = readWholeNumber('windowDays', row.windowDays)
  columns.eventDay[index] = readDayNumber('eventDate', row.eventDate)
  for (const key of listMisnamedKeys(row)) rejectField(key)
  columns.untracked[index] =
    (row.noHourMeter === true ? 1 : 0) + (row.noOdometer === true ? 2 : 0) + (unusable === undefined ? 0 : 4)
  return unusable ?? NO_FIELDS
}

/** Unknown keys that probably mean a field, and flags that are neither true nor false. */
function listMisnamedKeys(row: DueRow): readonly string[] {
  let found: string[] | undefined
  for (const key in row) {
    const isKnownField = key === 'id' || KNOWN_FIELDS.has(key)
    if (isKnownField ? !FLAG_FIELDS.has(key) : !Object.hasOwn(row, key)) continue
    const value: unknown = row[key as keyof DueRow]
    if (
      !isPresent(value) ||
      (isKnownField ? typeof value === 'boolean' : suggestFields(key, value).length === 0)
    )
      continue
    found ??= []
    found.push(key)
  }
  return found ?? NO_FIELDS
}

const FLAG_FIELDS: ReadonlySet<string> = /* @__PURE__ */ new Set(['noHourMeter', 'noOdometer'])
const KNOWN_FIELDS: ReadonlySet<string> = /* @__PURE__ */ new Set(DUE_ROW_FIELDS)
const NO_FIELDS: readonly string[] = []

function isPresent(value: unknown): boolean {
  return value !== undefined && value !== null
}
