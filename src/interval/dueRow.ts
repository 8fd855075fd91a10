import type { DateText } from '../calendar/index.js'
import type { DistanceUnit } from '../quantity/index.js'

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

export type DueRowField = Exclude<keyof DueRow, 'id'>

/** Every field of a row but its id, to recognize a misspelt one. */
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
