import { countEdits } from '../base/index.js'
import { isDate } from '../calendar/index.js'
import { DUE_ROW_FIELDS, type DueRowField } from './dueRow.js'

const LIMITS: readonly DueRowField[] = [
  'everyHours',
  'everyDistance',
  'everyDistanceUnit',
  'everyMonths',
  'everyDays',
]
const EVENT: readonly DueRowField[] = ['eventDate']
const FOREIGN: readonly DueRowField[] = []

/**
 * The fields that another key of a row may mean: those spelt nearly so, else for a limit or an event by another name, such
 * as `everyYears`, those there are. None: a column of other use.
 */
export function findMeantFields(key: string, value: unknown): readonly DueRowField[] {
  const near = findNearFields(key)
  if (near.length > 0) return near
  if (
    /^every/i.test(key) &&
    (typeof value === 'number' || (typeof value === 'string' && /^P?[0-9]/.test(value)))
  )
    return LIMITS
  return /^event/i.test(key) && isDate(value) ? EVENT : FOREIGN
}

const MAX_KEPT = 1000
/** Every row of a table has the same keys. */
const kept = /* @__PURE__ */ new Map<string, readonly DueRowField[]>()

function findNearFields(key: string): readonly DueRowField[] {
  if (key.length > 40) return FOREIGN
  const known = kept.get(key)
  if (known !== undefined) return known
  const near = DUE_ROW_FIELDS.filter((field) => isNear(splitWords(key), splitWords(field)))
  if (kept.size < MAX_KEPT) kept.set(key, near)
  return near
}

function splitWords(name: string): readonly string[] {
  return name
    .replace(/(?<=[a-z])(?=[A-Z])/g, ' ')
    .toLowerCase()
    .split(/[\s_-]+/)
}

/** One slip in the whole name or one in each word: with two in a word, `lastName` would be `lastDate`. */
function isNear(written: readonly string[], field: readonly string[]): boolean {
  return (
    isOneSlip(written.join(''), field.join('')) ||
    (written.length === field.length && written.every((word, place) => isOneSlip(word, field[place] ?? '')))
  )
}

function isOneSlip(written: string, name: string): boolean {
  return written === name || (Math.max(written.length, name.length) > 3 && countEdits(written, name, 1) <= 1)
}
