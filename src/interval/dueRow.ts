import type { DateText } from '../calendar/index.js'
import type { DistanceUnit } from '../quantity/index.js'

/**
 * One service of one machine as a flat row of a database or a line of JSON. Absent and null mean the same:
 * not known, or no such limit. Meters are totals that include swaps and rollovers. A machine that was never
 * serviced has its first use as `lastDate` and 0 as its last readings. Without a later reading, the reading
 * of the last service is used. Intervals are counted from completion.
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
  /** The unit of `lastDistance` and `distance`; required if one of them is given. */
  readonly distanceUnit?: DistanceUnit | null
  readonly everyHours?: number | null
  readonly everyDistance?: number | null
  /** The unit of `everyDistance` and `windowDistance`; required if one of them is given. */
  readonly everyDistanceUnit?: DistanceUnit | null
  readonly everyMonths?: number | null
  readonly everyDays?: number | null
  readonly windowHours?: number | null
  readonly windowDistance?: number | null
  readonly windowMonths?: number | null
  readonly windowDays?: number | null
  /** The date of an event that makes the service due before next use, if it is later than the last service. */
  readonly eventDate?: DateText | null
  readonly noHourMeter?: boolean | null
  readonly noOdometer?: boolean | null
}

export type DueRowField = Exclude<keyof DueRow, 'id'>

/** Every field of a row except its id, to find misspelt keys. */
export const DUE_ROW_FIELDS: readonly DueRowField[] = [
  'lastDate',
  'lastHours',
  'lastDistance',
  'hours',
  'hoursDate',
  'distance',
  'distanceDate',
  'distanceUnit',
  'everyHours',
  'everyDistance',
  'everyDistanceUnit',
  'everyMonths',
  'everyDays',
  'windowHours',
  'windowDistance',
  'windowMonths',
  'windowDays',
  'eventDate',
  'noHourMeter',
  'noOdometer',
]
