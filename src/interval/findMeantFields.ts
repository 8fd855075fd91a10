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

/**
 * The fields that an unknown key of a row may mean: those spelt nearly like it. Else all limits for a key such as
 * `everyYears` with an amount, and the event for one such as `eventDay` with a date. None: a column of other use.
 */
export function findMeantFields(key: string, value: unknown): readonly DueRowField[] {
  const near = findNearFields(key)
  if (near.length > 0) return near
  const isAmount = typeof value === 'number' || (typeof value === 'string' && /^P?[0-9]/.test(value))
  if (isAmount && /^every/i.test(key)) return LIMITS
  return /^event/i.test(key) && isDate(value) ? ['eventDate'] : []
}

const MAX_KEY_LENGTH = 40
const MAX_KEYS_KEPT = 1000
/** By key: every row of a table has the same keys. */
const nearFields = /* @__PURE__ */ new Map<string, readonly DueRowField[]>()

function findNearFields(key: string): readonly DueRowField[] {
  if (key.length > MAX_KEY_LENGTH) return []
  const known = nearFields.get(key)
  if (known !== undefined) return known
  const near = DUE_ROW_FIELDS.filter((field) => isMisspelt(splitWords(key), splitWords(field)))
  if (nearFields.size < MAX_KEYS_KEPT) nearFields.set(key, near)
  return near
}

function splitWords(name: string): readonly string[] {
  return name
    .replace(/(?<=[a-z])(?=[A-Z])/g, ' ')
    .toLowerCase()
    .split(/[\s_-]+/)
}

/** One mistake in the whole name or one in each word: with two in a word, `lastName` would be `lastDate`. */
function isMisspelt(key: readonly string[], field: readonly string[]): boolean {
  return (
    isNearly(key.join(''), field.join('')) ||
    (key.length === field.length && key.every((word, place) => isNearly(word, field[place] ?? '')))
  )
}

/** With one mistake at most, and none in three letters. */
function isNearly(written: string, name: string): boolean {
  return written === name || (Math.max(written.length, name.length) > 3 && countEdits(written, name, 1) <= 1)
}
