import { countEdits } from '../base/index.js'
import { isDate } from '../calendar/index.js'
import { DUE_ROW_FIELDS, type DueRowField } from './dueRow.js'

const LIMIT_FIELDS: readonly DueRowField[] = [
  'everyHours',
  'everyDistance',
  'everyDistanceUnit',
  'everyMonths',
  'everyDays',
]

/**
 * The fields that an unknown key of a row may mean: those with a similar spelling; otherwise all limits for a key such as
 * `everyYears` with an amount, or the event for a key such as `eventDay` with a date. Empty: a column for another use.
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
