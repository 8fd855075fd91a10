import { type Result, refuse } from '../base/index.js'
import type { CalendarCodes } from './codes.js'
import type { Period } from './dateText.js'

/**
 * Reads a calendar period such as `P6M`: `P`, then years `Y`, months `M`, weeks `W` and days `D` in this order, at least one of
 * them, each a whole number of one to seven digits. Source: ISO 8601-1:2019 durations without time and fractions; weeks may be
 * combined with other parts, as in ECMAScript (test262 `Temporal/Duration/from/argument-string*`).
 */
export function parsePeriod(text: string): Result<Period, CalendarCodes> {
  if (typeof text !== 'string') throw refuse('text', text, 'a string')
  const period = scanPeriod(text)
  if (period !== undefined) return { ok: true, value: period, findings: [] }
  const params = { text: text.slice(0, 40) }
  const document = { kind: 'text' } as const
  const finding = { code: 'calendar/not-a-period', severity: 'error', document, path: '', params } as const
  return { ok: false, findings: [finding] }
}

const PERIOD = /^P(?=\d)(?:(\d{1,7})Y)?(?:(\d{1,7})M)?(?:(\d{1,7})W)?(?:(\d{1,7})D)?$/

/** The parts of a period; undefined if the text is not a period. */
export function scanPeriod(text: string): Period | undefined {
  const parts = PERIOD.exec(text)
  if (!parts) return undefined
  const [, years = 0, months = 0, weeks = 0, days = 0] = parts
  return { years: +years, months: +months, weeks: +weeks, days: +days }
}
