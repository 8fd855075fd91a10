import { countEdits } from '../base/index.js'
import { type DateText, isDate } from '../calendar/index.js'
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

const LIMIT_FIELDS: readonly DueRowField[] = [
  'everyHours',
  'everyDistance',
  'everyDistanceUnit',
  'everyMonths',
  'everyDays',
]

/**
 * The fields that an unknown key of a row may mean: those with a similar spelling. Otherwise a key such as `everyYears`
 * with an amount may mean any limit, and a key such as `eventDay` with a date the event. Empty if the column has
 * another use.
 */
export function suggestFields(key: string, value: unknown): readonly DueRowField[] {
  const fields = findSimilarFields(key)
  if (fields.length > 0) return fields
  const isAmount = typeof value === 'number' || (typeof value === 'string' && /^P?[0-9]/.test(value))
  if (isAmount && /^every/i.test(key)) return LIMIT_FIELDS
  return /^event/i.test(key) && isDate(value) ? ['eventDate'] : []
}

const MAX_KEY_LENGTH = 40
const MAX_CACHED_KEYS = 1000
/** A cache by key: every row of a table has the same keys. */
const fieldsByKey = /* @__PURE__ */ new Map<string, readonly DueRowField[]>()

function findSimilarFields(key: string): readonly DueRowField[] {
  if (key.length > MAX_KEY_LENGTH) return []
  const known = fieldsByKey.get(key)
  if (known !== undefined) return known
  const fields = DUE_ROW_FIELDS.filter((field) => isMisspelt(splitWords(key), splitWords(field)))
  if (fieldsByKey.size < MAX_CACHED_KEYS) fieldsByKey.set(key, fields)
  return fields
}

function splitWords(name: string): readonly string[] {
  return name
    .replace(/(?<=[a-z])(?=[A-Z])/g, ' ')
    .toLowerCase()
    .split(/[\s_-]+/)
}

/**
 * One mistake in the whole name, or one in each word: with two in a word, `lastName` would match `lastDate`.
 */
function isMisspelt(key: readonly string[], field: readonly string[]): boolean {
  return (
    isSimilar(key.join(''), field.join('')) ||
    (key.length === field.length && key.every((word, place) => isSimilar(word, field[place] ?? '')))
  )
}

/** At most one mistake, and none in words of up to three letters. */
function isSimilar(written: string, name: string): boolean {
  return written === name || (Math.max(written.length, name.length) > 3 && countEdits(written, name, 1) <= 1)
}
